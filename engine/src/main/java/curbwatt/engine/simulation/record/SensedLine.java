package curbwatt.engine.simulation.record;

import curbwatt.engine.result.SensedSample;

/** Extremes of a cutoff's sensed voltage since the line before. */
final class SensedLine {

    private final int cutoff;
    private double lowestV = Double.POSITIVE_INFINITY;
    private double highestV = Double.NEGATIVE_INFINITY;

    /** A line of the cutoff at a place in the vehicle. */
    SensedLine(int cutoff) {
        this.cutoff = cutoff;
    }

    void clear() {
        lowestV = Double.POSITIVE_INFINITY;
        highestV = Double.NEGATIVE_INFINITY;
    }

    /** Adds the part of a step between two shares of its length. */
    void add(Step step, double fromShare, double toShare) {
        double fromV = step.isStraight() ? at(step, fromShare) : step.sensedLowestV(cutoff);
        double toV = step.isStraight() ? at(step, toShare) : step.sensedHighestV(cutoff);
        lowestV = Math.min(lowestV, Math.min(fromV, toV));
        highestV = Math.max(highestV, Math.max(fromV, toV));
    }

    /** The line, at a share of a step. */
    SensedSample sample(Step step, double share) {
        return new SensedSample(at(step, share), lowestV, highestV);
    }

    private double at(Step step, double share) {
        double startV = step.sensedStartV(cutoff);
        return startV + share * (step.sensedEndV(cutoff) - startV);
    }
}

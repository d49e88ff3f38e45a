package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.SenseTap;

/**
 * What a first-order filter makes of a waveform that repeats: its ripple in closed form.
 *
 * <p>Over a segment of length d at voltage v the output goes from F to v + (F − v) e^(−d/τ), so over a cycle it is linear
 * in F: F → G + ρ F, ρ = e^(−T/τ). The output that comes back is F0 = G/(1 − ρ). A parabola u is followed late, by exactly
 * τ u′ − τ² u″; the combinations' voltages run on parabolas, and their mean's lag is taken for all of them. Whatever else the
 * output had at first dies away as e^(−t/τ).
 */
final class Filter {

    /** What is left of this share of a volt is nothing. */
    private static final double NOTHING = 1e-12;
    /** Time constants in which that is what is left. */
    private static final double FORGETS_IN = 28;

    private final double timeConstantS;
    private double[] voltageV = new double[0];
    private double[] slopeV = new double[0];
    private double[] bendV = new double[0];
    private double[] keeps = new double[0];
    private FlashPattern pattern;
    private double keptInACycle;
    private double lowestV;
    private double highestV;

    Filter(double timeConstantS) {
        this.timeConstantS = timeConstantS;
    }

    /** Looks at a pattern: what a segment leaves of what there was before it. */
    void begin(FlashPattern next) {
        pattern = next;
        voltageV = new double[next.size()];
        slopeV = new double[next.size()];
        bendV = new double[next.size()];
        keeps = next.isSteady() ? new double[0] : next.keeps(timeConstantS);
        keptInACycle = Math.exp(-next.cycleS() / timeConstantS);
    }

    /** Looks for the lowest and highest of the waveform as it is at a share of a step, if that had always been. */
    void look(LongStep step, double share, SenseTap tap, double errorV) {
        suppose(step, share, tap, errorV);
        double outputV = pattern.isSteady() ? voltageV[0] : gained(0, keeps.length, 0) / (1 - keptInACycle);
        double lowV = outputV;
        double highV = outputV;
        for (int s = 0; s < keeps.length; s++) {
            outputV = outputV * keeps[s] + (1 - keeps[s]) * voltageV[pattern.combination(s)];
            lowV = Math.min(lowV, outputV);
            highV = Math.max(highV, outputV);
        }
        lowestV = lowV;
        highestV = highV;
    }

    /** Each combination's voltage at a share of a step, as late as a filter follows it: by as much as the mean of all. */
    private void suppose(LongStep step, double share, SenseTap tap, double errorV) {
        double meanSlopeV = 0;
        double meanBendV = 0;
        for (int k = 0; k < voltageV.length; k++) {
            double startV = tap.voltageV(step.start().points[k]);
            double middleV = tap.voltageV(step.middle().points[k]);
            double endV = tap.voltageV(step.end().points[k]);
            double slope = -3 * startV + 4 * middleV - endV;
            double bend = 4 * (startV - 2 * middleV + endV);
            meanSlopeV += step.share(k) * (slope + share * bend);
            meanBendV += step.share(k) * bend;
            voltageV[k] = startV + errorV + share * (slope + 0.5 * share * bend);
        }
        double late = timeConstantS / step.lengthS();
        double lagV = late * (meanSlopeV - late * meanBendV);
        for (int k = 0; k < voltageV.length; k++) {
            voltageV[k] -= lagV;
        }
    }

    /**
     * Follows the waveform itself from one share of a step to another, as it does not repeat; {@link #lowestV} and
     * {@link #highestV} are those on the way.
     *
     * @param heldV what the output is at first (V)
     * @return what it is at last (V)
     */
    double follow(LongStep step, double fromShare, double toShare, SenseTap tap, double errorV, double heldV) {
        layParabolas(step, tap, errorV);
        lowestV = heldV;
        highestV = heldV;
        double outputV = heldV;
        double startS = step.startS();
        double fromS = startS + fromShare * step.lengthS();
        double endS = startS + toShare * step.lengthS();
        double atS = fromS;
        pattern.seek(atS);
        while (endS - atS > 1e-6) {
            double toS = Math.min(pattern.endS(), endS);
            double inV = inV(pattern.combination(), (0.5 * (atS + toS) - startS) / step.lengthS());
            boolean whole = atS > fromS && toS < endS;
            double keep = whole ? keeps[pattern.segment()] : Math.exp((atS - toS) / timeConstantS);
            outputV = inV + (outputV - inV) * keep;
            lowestV = Math.min(lowestV, outputV);
            highestV = Math.max(highestV, outputV);
            atS = toS;
            pattern.next();
        }
        return outputV;
    }

    /** What a combination puts in at a share of the step that {@link #layParabolas} was told (V). */
    double inV(int combination, double share) {
        return voltageV[combination] + share * (slopeV[combination] + share * bendV[combination]);
    }

    /** Share of its output that the filter keeps over a whole segment. */
    double keeps(int segment) {
        return keeps[segment];
    }

    double timeConstantS() {
        return timeConstantS;
    }

    /** Lays each combination's voltage at the start, with its slope and bend over the step. */
    void layParabolas(LongStep step, SenseTap tap, double errorV) {
        for (int k = 0; k < voltageV.length; k++) {
            double startV = tap.voltageV(step.start().points[k]);
            double middleV = tap.voltageV(step.middle().points[k]);
            double endV = tap.voltageV(step.end().points[k]);
            voltageV[k] = startV + errorV;
            slopeV[k] = -3 * startV + 4 * middleV - endV;
            bendV[k] = 2 * startV - 4 * middleV + 2 * endV;
        }
    }

    double lowestV() {
        return lowestV;
    }

    double highestV() {
        return highestV;
    }

    /**
     * What the output is at a share of a step.
     *
     * @param heldV what it is at an earlier share (V)
     */
    double endV(LongStep step, double fromShare, double share, SenseTap tap, double errorV, double heldV) {
        if (!pattern.repeats()) {
            // whatever it was so long before has died away
            double lastShare = share - FORGETS_IN * timeConstantS / step.lengthS();
            return follow(step, Math.max(fromShare, lastShare), share, tap, errorV, heldV);
        }
        double keep = Math.exp((fromShare - share) * step.lengthS() / timeConstantS);
        double offV = keep < NOTHING ? 0 : heldV - settledV(step, fromShare, tap, errorV);
        return settledV(step, share, tap, errorV) + offV * keep;
    }

    /** Output at a share of a step, of the waveform as it is there, if that had always been (V). */
    double settledV(LongStep step, double share, SenseTap tap, double errorV) {
        suppose(step, share, tap, errorV);
        if (pattern.isSteady()) {
            return voltageV[0];
        }
        double timeS = step.startS() + share * step.lengthS();
        pattern.seek(timeS);
        int place = pattern.segment();
        double outputV = gained(0, place, gained(place, keeps.length, 0)) / (1 - keptInACycle);
        double intoS = Math.max(0, pattern.lengthS(place) - (pattern.endS() - timeS));
        double inV = voltageV[pattern.combination(place)];
        return inV + (outputV - inV) * Math.exp(-intoS / timeConstantS);
    }

    /** The output after some segments, from what it was before them (V). */
    private double gained(int from, int to, double beforeV) {
        double outputV = beforeV;
        for (int s = from; s < to; s++) {
            outputV = outputV * keeps[s] + (1 - keeps[s]) * voltageV[pattern.combination(s)];
        }
        return outputV;
    }
}

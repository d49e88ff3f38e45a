package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.SenseTap;

/**
 * What a first-order filter makes of a waveform that repeats: its ripple in closed form.
 *
 * <p>Over a segment of length d at voltage v the output goes from F to v + (F − v) e^(−d/τ), so over a cycle it is linear
 * in F: F → G + ρ F, ρ = e^(−T/τ). The output that comes back is F0 = G/(1 − ρ). A slow drift at rate r is followed late,
 * by r τ. Whatever else the output had at first dies away as e^(−t/τ).
 */
final class Filter {

    private final double timeConstantS;
    private double[] voltageV = new double[0];
    private double[] keeps = new double[0];
    private FlashPattern pattern;
    private double firstV;
    private double lowestV;
    private double highestV;

    Filter(double timeConstantS) {
        this.timeConstantS = timeConstantS;
    }

    /** Looks at a pattern: what a segment leaves of what there was before it. */
    void begin(FlashPattern next) {
        pattern = next;
        voltageV = new double[next.size()];
        keeps = new double[next.segments()];
        for (int s = 0; s < keeps.length && !next.isSteady(); s++) {
            keeps[s] = Math.exp(-next.lengthS(s) / timeConstantS);
        }
    }

    double timeConstantS() {
        return timeConstantS;
    }

    /** Looks at an instant of a long step. */
    void look(Stage stage, SenseTap tap, double errorV, double driftVPerS) {
        double lagV = driftVPerS * timeConstantS;
        for (int k = 0; k < stage.points.length; k++) {
            voltageV[k] = tap.voltageV(stage.points[k]) + errorV - lagV;
        }
        if (pattern.isSteady()) {
            firstV = voltageV[0];
            lowestV = firstV;
            highestV = firstV;
            return;
        }
        double gainedV = 0;
        double kept = 1;
        for (int s = 0; s < keeps.length; s++) {
            gainedV = gainedV * keeps[s] + (1 - keeps[s]) * voltageV[pattern.combination(s)];
            kept *= keeps[s];
        }
        firstV = gainedV / (1 - kept);
        lowestV = firstV;
        highestV = firstV;
        double outputV = firstV;
        for (int s = 0; s < keeps.length; s++) {
            outputV = outputV * keeps[s] + (1 - keeps[s]) * voltageV[pattern.combination(s)];
            lowestV = Math.min(lowestV, outputV);
            highestV = Math.max(highestV, outputV);
        }
    }

    double lowestV() {
        return lowestV;
    }

    double highestV() {
        return highestV;
    }

    /** Output at a time, of the waveform looked at (V). */
    double atV(double timeS) {
        if (pattern.isSteady()) {
            return firstV;
        }
        pattern.seek(timeS);
        int place = pattern.segment();
        double outputV = firstV;
        for (int s = 0; s < place; s++) {
            outputV = outputV * keeps[s] + (1 - keeps[s]) * voltageV[pattern.combination(s)];
        }
        double intoS = Math.max(0, pattern.lengthS(place) - (pattern.endS() - timeS));
        double inV = voltageV[pattern.combination(place)];
        return inV + (outputV - inV) * Math.exp(-intoS / timeConstantS);
    }
}

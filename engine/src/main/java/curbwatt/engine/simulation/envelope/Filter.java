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

    private final double timeConstantS;
    private double[] voltageV = new double[0];
    private double[] slopeV = new double[0];
    private double[] bendV = new double[0];
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
        slopeV = new double[next.size()];
        bendV = new double[next.size()];
        keeps = next.isSteady() ? new double[0] : next.keeps(timeConstantS);
    }

    double timeConstantS() {
        return timeConstantS;
    }

    /** Looks at the waveform as it is at a share of a long step. */
    void look(LongStep step, double share, SenseTap tap, double errorV) {
        double lagV = lagV(step, share, tap);
        for (int k = 0; k < voltageV.length; k++) {
            voltageV[k] = alongV(step, k, share, tap) + errorV - lagV;
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

    /** By how much the output is behind the mean of all combinations (V). */
    private double lagV(LongStep step, double share, SenseTap tap) {
        double meanSlopeV = 0;
        double meanBendV = 0;
        for (int k = 0; k < voltageV.length; k++) {
            double startV = tap.voltageV(step.start().points[k]);
            double middleV = tap.voltageV(step.middle().points[k]);
            double endV = tap.voltageV(step.end().points[k]);
            double ownBendV = 4 * (startV - 2 * middleV + endV);
            meanSlopeV += step.share(k) * (-3 * startV + 4 * middleV - endV + share * ownBendV);
            meanBendV += step.share(k) * ownBendV;
        }
        double late = timeConstantS / step.lengthS();
        return late * (meanSlopeV - late * meanBendV);
    }

    /**
     * Follows the waveform itself from the start of a step to a share of it, as it does not repeat; {@link #lowestV} and
     * {@link #highestV} are those on the way.
     *
     * @param heldV what the output is at the start (V)
     * @return what it is at the end (V)
     */
    double follow(LongStep step, double share, SenseTap tap, double errorV, double heldV) {
        layParabolas(step, tap, errorV);
        lowestV = heldV;
        highestV = heldV;
        double outputV = heldV;
        double startS = step.startS();
        double endS = startS + share * step.lengthS();
        double atS = startS;
        pattern.seek(atS);
        while (endS - atS > 1e-6) {
            double toS = Math.min(pattern.endS(), endS);
            double along = (0.5 * (atS + toS) - startS) / step.lengthS();
            int k = pattern.combination();
            double inV = voltageV[k] + along * (slopeV[k] + along * bendV[k]);
            boolean whole = atS > startS && toS < endS;
            double keep = whole ? keeps[pattern.segment()] : Math.exp((atS - toS) / timeConstantS);
            outputV = inV + (outputV - inV) * keep;
            lowestV = Math.min(lowestV, outputV);
            highestV = Math.max(highestV, outputV);
            atS = toS;
            pattern.next();
        }
        return outputV;
    }

    /** Each combination's voltage at the start, with its slope and bend over the step. */
    private void layParabolas(LongStep step, SenseTap tap, double errorV) {
        for (int k = 0; k < voltageV.length; k++) {
            double startV = tap.voltageV(step.start().points[k]);
            double middleV = tap.voltageV(step.middle().points[k]);
            double endV = tap.voltageV(step.end().points[k]);
            voltageV[k] = startV + errorV;
            slopeV[k] = -3 * startV + 4 * middleV - endV;
            bendV[k] = 2 * startV - 4 * middleV + 2 * endV;
        }
    }

    private static double alongV(LongStep step, int combination, double share, SenseTap tap) {
        double startV = tap.voltageV(step.start().points[combination]);
        double middleV = tap.voltageV(step.middle().points[combination]);
        double endV = tap.voltageV(step.end().points[combination]);
        return startV
                + share * (-3 * startV + 4 * middleV - endV)
                + share * share * (2 * startV - 4 * middleV + 2 * endV);
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

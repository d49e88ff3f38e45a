package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.NodePoint;
import java.util.Arrays;

/**
 * How far, on average over a long step, the drive of a battery has run ahead of its mean.
 *
 * <p>The mean gives what all flashes of a step drew together, not when. What is drawn late in a step has had less time to be
 * bound and to come free again. With R(t) the running sum of what was driven above the mean, zero at both ends, a mode ends off by
 *
 * <pre>
 *   ∫ (D − D̄) e^(−(T−t)/τ) dt = −1/τ ∫ R e^(−(T−t)/τ) dt ≈ −R̄ (1 − e^(−T/τ))
 * </pre>
 *
 * <p>as R swings quickly against τ. A step of a few cycles, or over slow clocks, is taken in slices, each with its own R̄. Some
 * 30 µV, if a step ends within a turn of a clock of a second that switches 10 A.
 */
final class RunAhead {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double SAME_TIME_S = 1e-6;
    /** Longest slice of a step of a few cycles (s): a thirtieth of the batteries' fastest time constant. */
    private static final double SLICE_S = 4;

    private double[] driveA = new double[0];
    private final Segments rest = new Segments();
    private int slices;
    /** Mean of the running sum in each slice (Ah). */
    private double[] meanAheadAh = new double[16];
    /** How long ago each slice begins, seen from the step's end; the next one begins where it ends (s). */
    private double[] agoS = new double[17];

    /** Moves the batteries, at the end of a step, by what their mean path leaves out. */
    void correct(Batteries batteries, LongStep step) {
        FlashPattern pattern = step.pattern();
        if (pattern.isSteady()) {
            return;
        }
        int size = pattern.size();
        if (driveA.length != size) {
            driveA = new double[size];
        }
        Stage middle = step.middle();
        for (int k = 0; k < size; k++) {
            driveA[k] = drive(batteries.starter(), middle.points[k].starter) - middle.starter.driveA();
        }
        correct(batteries.starter(), step);
        if (batteries.areTwo()) {
            for (int k = 0; k < size; k++) {
                driveA[k] = drive(batteries.auxiliary(), middle.points[k].equipment) - middle.auxiliary.driveA();
            }
            correct(batteries.auxiliary(), step);
        }
    }

    private static double drive(BatteryWork battery, NodePoint point) {
        return point.mainA < 0 ? battery.chargingFactor() * point.mainA : point.mainA;
    }

    private void correct(BatteryWork battery, LongStep step) {
        FlashPattern pattern = step.pattern();
        Segments told = step.telling();
        slices = 0;
        agoS[0] = step.lengthS();
        if (step.tellsAll()) {
            overRest(told, step.lengthS(), 0);
        } else {
            double cyclesS = pattern.cycleS() * Math.floor(step.lengthS() / pattern.cycleS());
            double aheadAs = overCycles(told, pattern.cycleS(), cyclesS);
            double restS = step.lengthS() - cyclesS;
            if (restS > SAME_TIME_S) {
                rest.take(pattern, step.startS() + cyclesS, step.startS() + step.lengthS());
                overRest(rest, restS, aheadAs);
            }
        }
        battery.lag(meanAheadAh, agoS, slices);
    }

    /**
     * Goes over whole cycles: one tells of all, and by how much each goes further ahead, as a step does not end where a cycle
     * does. Each slice is half of what is left.
     *
     * @return what has been driven above the mean after them (As)
     */
    private double overCycles(Segments cycle, double cycleS, double cyclesS) {
        double aheadAs = 0;
        double areaAsS = 0;
        for (int s = 0; s < cycle.size; s++) {
            double furtherAs = cycle.lengthS[s] * driveA[cycle.combination[s]];
            areaAsS += cycle.lengthS[s] * (aheadAs + 0.5 * furtherAs);
            aheadAs += furtherAs;
        }
        double furtherA = aheadAs / cycleS;
        double ofACycleAs = areaAsS / cycleS - 0.5 * aheadAs;
        double fromS = 0;
        while (fromS < cyclesS) {
            double sliceS = cyclesS - fromS > SLICE_S ? 0.5 * (cyclesS - fromS) : cyclesS - fromS;
            add(ofACycleAs + furtherA * (fromS + 0.5 * sliceS), sliceS);
            fromS += sliceS;
        }
        return furtherA * cyclesS;
    }

    /** Goes over segments one by one, in slices of equal length. */
    private void overRest(Segments told, double wholeS, double aheadBeforeAs) {
        double sliceS = wholeS / Math.ceil(wholeS / SLICE_S);
        double aheadAs = aheadBeforeAs;
        double areaAsS = 0;
        double inSliceS = 0;
        for (int s = 0; s < told.size; s++) {
            double leftS = told.lengthS[s];
            double aheadA = driveA[told.combination[s]];
            while (inSliceS + leftS >= sliceS) {
                double partS = sliceS - inSliceS;
                areaAsS += partS * (aheadAs + 0.5 * partS * aheadA);
                aheadAs += partS * aheadA;
                add(areaAsS / sliceS, sliceS);
                leftS -= partS;
                areaAsS = 0;
                inSliceS = 0;
            }
            areaAsS += leftS * (aheadAs + 0.5 * leftS * aheadA);
            aheadAs += leftS * aheadA;
            inSliceS += leftS;
        }
        if (inSliceS > SAME_TIME_S) {
            add(areaAsS / inSliceS, inSliceS);
        }
    }

    private void add(double meanAs, double durationS) {
        if (slices == meanAheadAh.length) {
            meanAheadAh = Arrays.copyOf(meanAheadAh, 2 * slices);
            agoS = Arrays.copyOf(agoS, 2 * slices + 1);
        }
        meanAheadAh[slices] = meanAs / SECONDS_PER_HOUR;
        agoS[slices + 1] = Math.max(0, agoS[slices] - durationS);
        slices++;
    }
}

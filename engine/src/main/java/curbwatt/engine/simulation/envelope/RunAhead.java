package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.NodePoint;

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
final class RunAhead implements SegmentTaker {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double SAME_TIME_S = 1e-6;
    /** Longest slice of a step of a few cycles (s): a thirtieth of the batteries' fastest time constant. */
    private static final double SLICE_S = 4;

    private double[] driveA = new double[0];
    /** What has been driven above the mean so far (As). */
    private double aheadAs;
    /** Its integral over the time looked at (As·s). */
    private double areaAsS;

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
        aheadAs = 0;
        double doneS = 0;
        if (pattern.tellingS(step.lengthS()) < step.lengthS()) {
            doneS = pattern.cycleS() * Math.floor(step.lengthS() / pattern.cycleS());
            overCycles(battery, step, doneS);
        }
        double restS = step.lengthS() - doneS;
        int slices = restS > SAME_TIME_S ? (int) Math.ceil(restS / SLICE_S) : 0;
        for (int i = 1; i <= slices; i++) {
            double lookedS = doneS + i * restS / slices;
            double fromS = step.startS() + lookedS - restS / slices;
            double meanAs = meanAs(pattern, fromS, step.startS() + lookedS);
            battery.lag(meanAs / SECONDS_PER_HOUR, restS / slices, step.lengthS() - lookedS);
        }
    }

    /**
     * The same over whole cycles: one tells of all, and by how much each goes further ahead, as a step does not end where a
     * cycle does.
     */
    private void overCycles(BatteryWork battery, LongStep step, double cyclesS) {
        double cycleS = step.pattern().cycleS();
        double meanAs = meanAs(step.pattern(), step.startS(), step.startS() + cycleS);
        double furtherA = aheadAs / cycleS;
        double ofACycleAs = meanAs - 0.5 * aheadAs;
        double fromS = 0;
        while (fromS < cyclesS) {
            double sliceS = cyclesS - fromS > SLICE_S ? 0.5 * (cyclesS - fromS) : cyclesS - fromS;
            battery.lag(
                    (ofACycleAs + furtherA * (fromS + 0.5 * sliceS)) / SECONDS_PER_HOUR,
                    sliceS,
                    step.lengthS() - fromS - sliceS);
            fromS += sliceS;
        }
        aheadAs = furtherA * cyclesS;
    }

    /** Mean of the running sum over a time, from where it stands (As). */
    private double meanAs(FlashPattern pattern, double fromS, double toS) {
        areaAsS = 0;
        pattern.tell(fromS, toS, this);
        return areaAsS / (toS - fromS);
    }

    @Override
    public void take(int combination, double fromS, double toS) {
        double furtherAs = (toS - fromS) * driveA[combination];
        areaAsS += (toS - fromS) * (aheadAs + 0.5 * furtherAs);
        aheadAs += furtherAs;
    }
}

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
 * <p>as R swings quickly against τ. Some 30 µV, if a step ends within a turn of a clock of a second that switches 10 A.
 */
final class RunAhead {

    private static final double SECONDS_PER_HOUR = 3600;

    private double[] driveA = new double[0];

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
        batteries.starter().lag(meanAheadAh(step), step.lengthS());
        if (batteries.areTwo()) {
            for (int k = 0; k < size; k++) {
                driveA[k] = drive(batteries.auxiliary(), middle.points[k].equipment) - middle.auxiliary.driveA();
            }
            batteries.auxiliary().lag(meanAheadAh(step), step.lengthS());
        }
    }

    private static double drive(BatteryWork battery, NodePoint point) {
        return point.mainA < 0 ? battery.chargingFactor() * point.mainA : point.mainA;
    }

    /** Mean of the running sum (Ah); what repeats has that of one cycle. */
    private double meanAheadAh(LongStep step) {
        FlashPattern pattern = step.pattern();
        double lookedS = Math.min(step.lengthS(), pattern.cycleS());
        double endS = step.startS() + lookedS;
        double atS = step.startS();
        double aheadAs = 0;
        double sum = 0;
        pattern.seek(atS);
        while (endS - atS > 1e-6) {
            double toS = Math.min(pattern.endS(), endS);
            double furtherAs = (toS - atS) * driveA[pattern.combination()];
            sum += (toS - atS) * (aheadAs + 0.5 * furtherAs);
            aheadAs += furtherAs;
            atS = toS;
            pattern.next();
        }
        return sum / lookedS / SECONDS_PER_HOUR;
    }
}

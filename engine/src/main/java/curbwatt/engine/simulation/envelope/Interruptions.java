package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.LevelTimer;
import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CutoffState;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.List;

/**
 * Counts that flashes interrupt before their delay is over.
 *
 * <p>A level may lie within the waveform for an hour: each flash dips below it, each pause is above. What a cutoff without a
 * filter has counted in that hour is of no interest but for the last interruption, if the longest stretch without one is shorter
 * than the delay. A combination interrupts a count if its voltage is plainly on the other side of the level throughout the step.
 */
final class Interruptions {

    private final Actions actions;
    private boolean[] interrupts = new boolean[0];
    private double fromS;

    Interruptions(Actions actions) {
        this.actions = actions;
    }

    /**
     * Whether every count whose level lies within the waveform of a step is interrupted in time.
     *
     * @param lowestReadingV lowest reading of each cutoff in the step (V)
     * @param highestReadingV highest (V)
     * @param marginV by how much a voltage may be off its parabola (V)
     */
    boolean come(LongStep step, double[] lowestReadingV, double[] highestReadingV, double marginV) {
        fromS = step.startS() + step.lengthS();
        List<CutoffState> cutoffs = actions.cutoffs();
        for (int i = 0; i < cutoffs.size(); i++) {
            CutoffState cutoff = cutoffs.get(i);
            for (int t = 0; t < cutoff.pendingTimers(); t++) {
                LevelTimer timer = cutoff.pendingTimer(t);
                if (timer.isWithin(lowestReadingV[i], highestReadingV[i])) {
                    findInterrupting(step, actions.tap(i), timer, cutoff.settings.sensorErrorV(), marginV);
                    if (!comeInTime(step, timer)) {
                        return false;
                    }
                    fromS = Math.min(fromS, lastFromS(step));
                }
            }
        }
        return true;
    }

    /** From when in the step found the devices have to be shown the waveform: what was counted before was interrupted (s). */
    double fromS() {
        return fromS;
    }

    /** Forgets what the counts in question had reached. */
    void interrupt(double[] lowestReadingV, double[] highestReadingV) {
        List<CutoffState> cutoffs = actions.cutoffs();
        for (int i = 0; i < cutoffs.size(); i++) {
            for (int t = 0; t < cutoffs.get(i).pendingTimers(); t++) {
                LevelTimer timer = cutoffs.get(i).pendingTimer(t);
                if (timer.isWithin(lowestReadingV[i], highestReadingV[i])) {
                    timer.reset();
                }
            }
        }
    }

    private void findInterrupting(LongStep step, SenseTap tap, LevelTimer timer, double errorV, double marginV) {
        int size = step.pattern().size();
        if (interrupts.length != size) {
            interrupts = new boolean[size];
        }
        for (int k = 0; k < size; k++) {
            double startV = voltageV(step.start(), k, tap);
            double middleV = voltageV(step.middle(), k, tap);
            double endV = voltageV(step.end(), k, tap);
            double bandV = marginV + Bounds.outside(startV, middleV, endV);
            double lowV = Math.min(startV, Math.min(middleV, endV)) - bandV + errorV;
            double highV = Math.max(startV, Math.max(middleV, endV)) + bandV + errorV;
            interrupts[k] = timer.isInterruptedBy(lowV, highV);
        }
    }

    private static double voltageV(Stage stage, int combination, SenseTap tap) {
        OperatingPoint point = stage.points[combination];
        return tap.voltageV(point);
    }

    /** Whether no stretch without an interruption is as long as the delay; of what repeats two cycles tell. */
    private boolean comeInTime(LongStep step, LevelTimer timer) {
        FlashPattern pattern = step.pattern();
        double endS = step.startS() + step.lengthS();
        double lookedS = Math.min(endS, step.startS() + 2 * pattern.cycleS());
        double countedS = timer.countedS();
        boolean any = false;
        double atS = step.startS();
        pattern.seek(atS);
        while (lookedS - atS > 1e-6) {
            double toS = Math.min(pattern.endS(), lookedS);
            boolean interrupted = interrupts[pattern.combination()];
            any |= interrupted;
            countedS = interrupted ? 0 : countedS + toS - atS;
            if (countedS >= timer.delayS()) {
                return false;
            }
            atS = toS;
            pattern.next();
        }
        return any;
    }

    /** Beginning of the last interruption of a step (s). */
    private double lastFromS(LongStep step) {
        FlashPattern pattern = step.pattern();
        pattern.seek(step.startS() + step.lengthS() - Envelope.BEFORE_EDGE_S);
        while (!interrupts[pattern.combination()]) {
            pattern.previous();
        }
        return Math.max(step.startS(), pattern.startS());
    }
}

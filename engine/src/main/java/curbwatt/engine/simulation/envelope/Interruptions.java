package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.LevelCount;
import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.part.Parabola;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Counts that flashes interrupt before their delay is over.
 *
 * <p>A level may lie within the waveform for an hour: each flash dips below it, each pause is above. What a device without a
 * filter has counted in that hour is of no interest but for the last interruption, if the longest stretch without one is shorter
 * than the delay. A combination interrupts a count if its voltage is plainly on the other side of the level throughout the step.
 */
final class Interruptions {

    private final CalmWatch calm;
    private final List<LevelCount> found = new ArrayList<>();
    private boolean[] interrupts = new boolean[0];
    /** Whether a combination is plainly on one side of the level. */
    private boolean[] plain = new boolean[0];
    /** Whether it interrupts all counts found. */
    private boolean[] interruptsAll = new boolean[0];

    private final Segments cycles = new Segments();
    private LongStep step;
    private double marginV;
    private boolean inTime;
    private boolean endsPlainly;
    private double fromS;

    Interruptions(CalmWatch calm) {
        this.calm = calm;
    }

    /**
     * Whether every count whose level lies within the waveform of a step is interrupted in time.
     *
     * @param deviationV by how much a voltage may be off its parabola (V)
     */
    boolean come(LongStep next, double deviationV) {
        step = next;
        marginV = deviationV;
        found.clear();
        inTime = true;
        endsPlainly = true;
        fromS = step.startS() + step.lengthS();
        makeRoom(step.pattern().size());
        Arrays.fill(interruptsAll, true);
        calm.countsWithin(step.startS(), this::look);
        return inTime;
    }

    /** From when in the step found the devices have to be shown the waveform: what was counted before was interrupted (s). */
    double fromS() {
        return fromS;
    }

    /** Whether, after the last interruptions, every combination is plainly on one side of the levels too. */
    boolean endPlainly() {
        return endsPlainly;
    }

    /** When all counts were last interrupted at once (s); the step's start: never. */
    double lastTogetherS() {
        FlashPattern pattern = step.pattern();
        double endS = step.startS() + step.lengthS();
        pattern.seek(endS - Envelope.BEFORE_EDGE_S);
        while (endS > step.startS() && !interruptsAll[pattern.combination()]) {
            endS = pattern.startS();
            pattern.previous();
        }
        return Math.max(step.startS(), endS);
    }

    /** The counts in question. */
    List<LevelCount> found() {
        return found;
    }

    private void makeRoom(int size) {
        if (interrupts.length != size) {
            interrupts = new boolean[size];
            plain = new boolean[size];
            interruptsAll = new boolean[size];
        }
    }

    private void look(LevelCount count, SenseTap tap, double errorV) {
        if (inTime) {
            findInterrupting(tap, count, errorV);
            inTime = comeInTime(count);
        }
        if (inTime) {
            fromS = Math.min(fromS, lastFromS());
            found.add(count);
        }
    }

    private void findInterrupting(SenseTap tap, LevelCount count, double errorV) {
        for (int k = 0; k < interrupts.length; k++) {
            double startV = voltageV(step.start(), k, tap);
            double middleV = voltageV(step.middle(), k, tap);
            double endV = voltageV(step.end(), k, tap);
            double lowV = Parabola.floor(startV, middleV, endV) - marginV + errorV;
            double highV = Parabola.ceiling(startV, middleV, endV) + marginV + errorV;
            interrupts[k] = count.isInterruptedBy(lowV, highV);
            interruptsAll[k] &= interrupts[k];
            plain[k] = !count.isWithin(lowV, highV);
        }
    }

    private static double voltageV(Stage stage, int combination, SenseTap tap) {
        OperatingPoint point = stage.points[combination];
        return tap.voltageV(point);
    }

    /** Whether no stretch without an interruption is as long as the delay; of what repeats two cycles tell. */
    private boolean comeInTime(LevelCount count) {
        Segments told = looked();
        double countedS = count.countedS();
        double longestS = 0;
        boolean any = false;
        for (int s = 0; s < told.size; s++) {
            boolean interrupted = interrupts[told.combination[s]];
            any |= interrupted;
            countedS = interrupted ? 0 : countedS + told.lengthS[s];
            longestS = Math.max(longestS, countedS);
        }
        return any && longestS < count.delayS();
    }

    private Segments looked() {
        double twiceS = 2 * step.pattern().cycleS();
        if (step.tellsAll() && step.lengthS() <= twiceS) {
            return step.telling();
        }
        cycles.take(step.pattern(), step.startS(), step.startS() + Math.min(step.lengthS(), twiceS));
        return cycles;
    }

    /** Beginning of the last interruption of a step (s). */
    private double lastFromS() {
        FlashPattern pattern = step.pattern();
        pattern.seek(step.startS() + step.lengthS() - Envelope.BEFORE_EDGE_S);
        while (!interrupts[pattern.combination()]) {
            endsPlainly &= plain[pattern.combination()];
            pattern.previous();
        }
        return Math.max(step.startS(), pattern.startS());
    }
}

package curbwatt.engine.simulation;

import curbwatt.engine.event.EventKind;
import java.util.OptionalDouble;

/**
 * Follows the restart margin while the engine is off and finds the times at which it passes through zero.
 *
 * <p>The margin is asked for every so often and runs smoothly between switchings, so the zero is taken on the straight
 * line
 * between two askings that have no switching between them.
 */
final class RestartWatch {

    /** Time between two askings (s). */
    static final double INTERVAL_S = 10;

    private final RunBook book;
    private final String subject;
    private double lastS = Double.NaN;
    private double lastV;
    private boolean lost;
    private OptionalDouble firstLostS = OptionalDouble.empty();

    RestartWatch(RunBook book, String subject) {
        this.book = book;
        this.subject = subject;
    }

    /** Begins anew: the engine has just stopped or something has switched, and the margin may have jumped. */
    void begin(double timeS, double marginV, double nodeV, double charge) {
        lastS = Double.NaN;
        ask(timeS, marginV, nodeV, charge);
    }

    /** The engine runs: nothing to follow. */
    void rest() {
        lastS = Double.NaN;
        lost = false;
    }

    boolean isDue(double timeS) {
        return !(timeS - lastS < INTERVAL_S);
    }

    void ask(double timeS, double marginV, double nodeV, double charge) {
        boolean nowLost = marginV < 0;
        if (nowLost != lost) {
            double atS = Double.isNaN(lastS) || !Double.isFinite(marginV - lastV)
                    ? timeS
                    : lastS + (timeS - lastS) * (lastV / (lastV - marginV));
            lost = nowLost;
            book.event(
                    atS,
                    lost ? EventKind.RESTART_MARGIN_LOST : EventKind.RESTART_MARGIN_REGAINED,
                    subject,
                    nodeV,
                    charge);
            if (lost && firstLostS.isEmpty()) {
                firstLostS = OptionalDouble.of(atS);
            }
        }
        lastS = timeS;
        lastV = marginV;
    }

    OptionalDouble firstLostS() {
        return firstLostS;
    }
}

package curbwatt.engine.simulation.device;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.simulation.book.RunBook;
import java.util.OptionalDouble;

/**
 * Follows the restart margin while the engine is off and finds the times at which it passes through zero.
 *
 * <p>The margin is asked for every so often, more often near its zero, and runs smoothly between switchings, so the zero is
 * taken on the straight line between two askings that have no switching between them.
 */
public final class RestartWatch {

    /** Time between two askings (s). */
    private static final double INTERVAL_S = 10;
    /** Time between two askings near the zero, where it is to be found (s). */
    public static final double FINE_INTERVAL_S = 0.25;
    /** Margin that counts as near the zero: more than any load but a starter moves it in ten seconds (V). */
    private static final double NEAR_V = 0.05;

    private final RunBook book;
    private final String subject;
    private double lastS = Double.NaN;
    private double lastV;
    private boolean lost;
    private OptionalDouble firstLostS = OptionalDouble.empty();

    public RestartWatch(RunBook book, String subject) {
        this.book = book;
        this.subject = subject;
    }

    /** Begins anew: the engine has just stopped or something has switched, and the margin may have jumped. */
    public void begin(double timeS, double marginV, double nodeV, double charge) {
        lastS = Double.NaN;
        ask(timeS, marginV, nodeV, charge);
    }

    /** The engine runs: nothing to follow. */
    public void rest() {
        lastS = Double.NaN;
        lost = false;
    }

    public boolean isDue(double timeS) {
        return !(timeS - lastS < (Math.abs(lastV) < NEAR_V ? FINE_INTERVAL_S : INTERVAL_S));
    }

    public void ask(double timeS, double marginV, double nodeV, double charge) {
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

    /** Whether the margin was lost when last asked for. */
    public boolean isLost() {
        return lost;
    }

    public OptionalDouble firstLostS() {
        return firstLostS;
    }
}

package curbwatt.charts.command;

import java.io.PrintWriter;

/**
 * How far a long run has come: nothing in the first second, then a line that is overwritten a few times a second and
 * wiped
 * at the end. Where complaints go to a file or another program, nothing at all: a line could not be taken back there.
 */
final class ProgressLine {

    private static final long SILENT_NS = 1_000_000_000L;
    private static final long BETWEEN_NS = 250_000_000L;

    /** Asking the clock costs more than a small step; not every step needs it. */
    private static final int STEPS_PER_LOOK = 256;

    private final PrintWriter err;
    private final boolean wanted;
    private long dueNs = System.nanoTime() + SILENT_NS;
    private final int stepsPerLook;
    private int stepsToLook;
    private boolean shown;

    ProgressLine(PrintWriter err, boolean wanted) {
        this(err, wanted, STEPS_PER_LOOK);
    }

    private ProgressLine(PrintWriter err, boolean wanted, int stepsPerLook) {
        this.err = err;
        this.wanted = wanted && Screen.showsComplaints();
        this.stepsPerLook = stepsPerLook;
        stepsToLook = stepsPerLook;
    }

    /** The line of a study, which hears of whole runs and not of steps. */
    static ProgressLine ofCases(PrintWriter err, boolean wanted) {
        return new ProgressLine(err, wanted, 1);
    }

    /** Hears the share that is done, 0 … 1. */
    void show(double fraction) {
        if (!wanted || --stepsToLook > 0) {
            return;
        }
        stepsToLook = stepsPerLook;
        long nowNs = System.nanoTime();
        if (nowNs < dueNs) {
            return;
        }
        dueNs = nowNs + BETWEEN_NS;
        shown = true;
        err.print("\rRunning: " + (int) (100 * fraction) + " %");
        err.flush();
    }

    /** Wipes what was shown. */
    void clear() {
        if (shown) {
            err.print("\r" + " ".repeat(20) + "\r");
            err.flush();
        }
    }
}

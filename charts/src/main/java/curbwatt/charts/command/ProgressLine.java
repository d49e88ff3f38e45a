package curbwatt.charts.command;

import java.io.PrintWriter;

/**
 * How far a long run has come: nothing in the first second, then a line that is overwritten a few times a second at a
 * terminal, and a new line every few seconds where there is none.
 */
final class ProgressLine {

    private static final long SILENT_NS = 1_000_000_000L;
    private static final long AT_TERMINAL_NS = 250_000_000L;
    private static final long ELSEWHERE_NS = 3_000_000_000L;
    /** Asking the clock costs more than a small step; not every step needs it. */
    private static final int STEPS_PER_LOOK = 256;

    private final PrintWriter err;
    private final boolean wanted;
    private final boolean terminal = Screen.isTerminal();
    private long dueNs = System.nanoTime() + SILENT_NS;
    private int stepsToLook = STEPS_PER_LOOK;
    private boolean shown;

    ProgressLine(PrintWriter err, boolean wanted) {
        this.err = err;
        this.wanted = wanted;
    }

    /** Hears the share that is done, 0 … 1. */
    void show(double fraction) {
        if (!wanted || --stepsToLook > 0) {
            return;
        }
        stepsToLook = STEPS_PER_LOOK;
        long nowNs = System.nanoTime();
        if (nowNs < dueNs) {
            return;
        }
        dueNs = nowNs + (terminal ? AT_TERMINAL_NS : ELSEWHERE_NS);
        shown = true;
        String text = "Running: " + (int) (100 * fraction) + " %";
        if (terminal) {
            err.print("\r" + text);
            err.flush();
        } else {
            err.println(text);
        }
    }

    /** Wipes what was shown at a terminal. */
    void clear() {
        if (shown && terminal) {
            err.print("\r" + " ".repeat(20) + "\r");
            err.flush();
        }
    }
}

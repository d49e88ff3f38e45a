package curbwatt.charts.page;

import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.Step;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Watches over a piece of work and ends it, out of the middle of a run if need be, when something newer takes its place or
 * its time is over.
 *
 * @param ticket the work
 * @param endNs when its time is over, by the clock of {@link System#nanoTime}
 * @param pulse called now and then; may throw to end the work
 * @param steps counts the steps between two looks
 */
record Watch(TabWork.Ticket ticket, long endNs, Runnable pulse, AtomicInteger steps) implements Recorder {

    /** Asking the clock costs more than a small step; not every step needs it. A long one takes far longer than that. */
    private static final int STEPS_PER_LOOK = 32;

    /** A watch over work that may take so long. */
    static Watch over(TabWork.Ticket ticket, double longestS, Runnable pulse) {
        return new Watch(ticket, System.nanoTime() + (long) (1e9 * longestS), pulse, new AtomicInteger());
    }

    @Override
    public void record(Step step) {
        if (steps.incrementAndGet() % STEPS_PER_LOOK == 0) {
            look();
        }
    }

    /**
     * Looks whether the work should go on.
     *
     * @throws StoppedException if it should not
     */
    void look() {
        if (ticket.superseded().get()) {
            throw new StoppedException(true);
        }
        if (System.nanoTime() - endNs > 0) {
            throw new StoppedException(false);
        }
        pulse.run();
    }
}

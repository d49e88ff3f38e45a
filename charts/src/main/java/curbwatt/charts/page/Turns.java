package curbwatt.charts.page;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * How many pieces of work may compute at once; the others wait in line, first come first served. A study stands in line
 * anew for each of its runs, so that two studies take turns and neither keeps the other waiting.
 *
 * @param places one permit for each piece that may compute
 */
record Turns(Semaphore places) {

    /** Looks at its work this often while it waits in line. */
    private static final long LOOK_MS = 100;

    /** So many at once. */
    static Turns of(int most) {
        return new Turns(new Semaphore(most, true));
    }

    /**
     * Waits for a turn, works, and gives the place back.
     *
     * @throws StoppedException if the work is given up
     */
    <T> T take(Watch watch, Supplier<T> work) {
        await(watch);
        try {
            watch.look();
            return work.get();
        } finally {
            places.release();
        }
    }

    /**
     * In the middle of work that has a turn: lets those who wait go first, and takes the next one.
     *
     * @throws StoppedException if the work is given up
     */
    void letOthersPass(Watch watch) {
        if (places.hasQueuedThreads()) {
            places.release();
            places.acquireUninterruptibly();
        }
        watch.look();
    }

    private void await(Watch watch) {
        try {
            while (!places.tryAcquire(LOOK_MS, TimeUnit.MILLISECONDS)) {
                watch.look();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new StoppedException(true);
        }
    }
}

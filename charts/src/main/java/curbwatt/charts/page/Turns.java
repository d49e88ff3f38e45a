package curbwatt.charts.page;

import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * How many pieces of work may compute at once; the others wait in line, first come first served. A study stands in line
 * anew for each of its runs, so that two studies take turns and neither keeps the other waiting.
 */
final class Turns {

    /** Looks at its work this often while it waits in line. */
    private static final long LOOK_MS = 100;

    /** Places that nobody has; there are none while somebody waits. */
    private final Semaphore free;

    /**
     * Those who wait, each with a sign that is given when its turn has come. A fair semaphore alone would not do: who looks up
     * from it to see whether its work is still wanted loses its place in the line.
     */
    private final Queue<Semaphore> line = new ArrayDeque<>();

    private Turns(int most) {
        free = new Semaphore(most);
    }

    /** So many at once. */
    static Turns of(int most) {
        return new Turns(most);
    }

    /** How many more could compute at once now. */
    int free() {
        return free.availablePermits();
    }

    /** How many stand in line. */
    synchronized int waiting() {
        return line.size();
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
            giveBack();
        }
    }

    /**
     * In the middle of work that has a turn: lets those who wait go first, and takes the next one.
     *
     * @throws StoppedException if the work is given up
     */
    void letOthersPass(Watch watch) {
        handOver().ifPresent(Semaphore::acquireUninterruptibly);
        watch.look();
    }

    private void await(Watch watch) {
        Semaphore sign = stand();
        boolean given = false;
        try {
            while (!given) {
                given = sign.tryAcquire(LOOK_MS, TimeUnit.MILLISECONDS);
                if (!given) {
                    watch.look();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new StoppedException(true);
        } finally {
            if (!given) {
                leave(sign);
            }
        }
    }

    private synchronized Semaphore stand() {
        Semaphore sign = new Semaphore(0);
        if (free.tryAcquire()) {
            sign.release();
        } else {
            line.add(sign);
        }
        return sign;
    }

    /** Hands a place to the first in line and goes to its end; empty: nobody waits. */
    private synchronized Optional<Semaphore> handOver() {
        if (line.isEmpty()) {
            return Optional.empty();
        }
        line.remove().release();
        Semaphore sign = new Semaphore(0);
        line.add(sign);
        return Optional.of(sign);
    }

    /** Leaves the line; a place that was given in the same instant goes to the next. */
    private synchronized void leave(Semaphore sign) {
        if (!line.remove(sign)) {
            giveBack();
        }
    }

    private synchronized void giveBack() {
        Semaphore next = line.poll();
        if (next == null) {
            free.release();
        } else {
            next.release();
        }
    }
}

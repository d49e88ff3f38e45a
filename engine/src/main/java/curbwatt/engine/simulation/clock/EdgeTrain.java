package curbwatt.engine.simulation.clock;

import curbwatt.engine.load.LoadPattern;

/** The edges of one load's pattern, one after the other; times are whole nanoseconds since the scene's start. */
public interface EdgeTrain {

    /** The end of time, for a pattern without edges (ns). */
    long NEVER = Long.MAX_VALUE;

    /** Whether the pattern is on. */
    boolean isLit();

    /** Time of the next edge (ns). */
    long nextEdgeNs();

    /** Passes the next edge. */
    void advance();

    /** Passes all edges up to a time (ns); true: there was one. */
    default boolean passTo(long timeNs) {
        boolean passed = false;
        while (nextEdgeNs() <= timeNs) {
            advance();
            passed = true;
        }
        return passed;
    }

    /** Time after which the edges repeat; never: they don't, or there are none (ns). */
    default long periodNs() {
        return NEVER;
    }

    /** Edges in one period. */
    default int edges() {
        return 0;
    }

    /** The edges of a pattern, standing before the scene's start. */
    static EdgeTrain of(LoadPattern pattern) {
        return pattern instanceof LoadPattern.RandomDuty random ? new RandomTrain(random) : FlashCycle.of(pattern);
    }
}

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

    /** The edges of a pattern, standing before the scene's start. */
    static EdgeTrain of(LoadPattern pattern) {
        return pattern instanceof LoadPattern.RandomDuty random ? new RandomTrain(random) : FlashCycle.of(pattern);
    }
}

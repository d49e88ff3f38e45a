package curbwatt.engine.study.settings;

/**
 * A rectangle of the map in which every setting tried has room enough, so that a device with coarse steps may take any
 * that lies in it.
 *
 * @param leastV lowest trip level (V)
 * @param mostV highest trip level (V)
 * @param leastS shortest delay (s)
 * @param mostS longest delay (s)
 * @param settings how many settings tried lie in it
 * @param enoughFactor room that each of them has at least, in multiples of the spread
 */
public record CoarseRange(
        double leastV, double mostV, double leastS, double mostS, int settings, double enoughFactor) {}

package curbwatt.engine.simulation.envelope;

/** Is told of the segments of a time, one after the other. */
@FunctionalInterface
interface SegmentTaker {

    /** A combination is lit from one time to another (s). */
    void take(int combination, double fromS, double toS);
}

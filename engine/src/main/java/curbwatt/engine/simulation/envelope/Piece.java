package curbwatt.engine.simulation.envelope;

/** A segment of a long step, or a part of one, that is in hand; filled anew for each. */
final class Piece {

    int segment;
    int combination;
    double lengthS;
    /** Shares of the step at which it begins and ends. */
    double fromShare;

    double toShare;
    /** Whether it is a whole segment of the pattern. */
    boolean isWhole;
}

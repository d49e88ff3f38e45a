package curbwatt.engine.wear;

/**
 * Cycles of about one depth.
 *
 * @param fromFraction shallowest depth of the class
 * @param toFraction depth at which the next class begins
 * @param halfCycles how many; two make a cycle
 */
public record DepthClass(double fromFraction, double toFraction, int halfCycles) {

    /** How many whole cycles they make. */
    public double cycles() {
        return 0.5 * halfCycles;
    }
}

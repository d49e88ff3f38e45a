package curbwatt.engine.wear;

/**
 * One counted swing of the state of charge.
 *
 * @param depthFraction from its highest to its lowest state of charge, above 0
 * @param middleFraction state of charge half way between
 * @param whole whether it went out and back; otherwise it counts half
 */
public record Cycle(double depthFraction, double middleFraction, boolean whole) {

    /** Half-cycles that it stands for: 2 or 1. */
    public int halfCycles() {
        return whole ? 2 : 1;
    }
}

package curbwatt.engine.load;

/**
 * A lit part of a flash cycle.
 *
 * @param fromMs start within the cycle (ms), from 0
 * @param toMs end within the cycle (ms), after the start
 */
public record OnInterval(double fromMs, double toMs) {

    /** Refuses an interval that ends before it begins. */
    public OnInterval {
        if (!(fromMs >= 0 && toMs > fromMs)) {
            throw new IllegalArgumentException("onIntervals has " + fromMs + " to " + toMs
                    + " ms; the end must lie after the start, the start not before 0");
        }
    }

    /** Length (ms). */
    public double lengthMs() {
        return toMs - fromMs;
    }
}

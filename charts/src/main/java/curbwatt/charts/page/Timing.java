package curbwatt.charts.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How long each part of an answer took, for the browser's tools and for the measurements: the header {@code Server-Timing}
 * of W3C's recommendation. For one answer, on one thread.
 */
final class Timing {

    private final List<String> parts = new ArrayList<>();
    private long lastNs = System.nanoTime();

    /** Ends a part: the time since the one before it, or since the question was there. */
    void end(String part) {
        long nowNs = System.nanoTime();
        parts.add(String.format(Locale.ROOT, "%s;dur=%.1f", part, (nowNs - lastNs) / 1e6));
        lastNs = nowNs;
    }

    /** The header's value, durations in milliseconds. */
    String header() {
        return String.join(", ", parts);
    }
}

package curbwatt.charts.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How long each part of an answer took, for the browser's tools and for the measurements: the header {@code Server-Timing}
 * of W3C's recommendation. For one answer, on one thread.
 */
final class Timing {

    private final List<String> parts = new ArrayList<>();
    private final List<Long> endsNs = new ArrayList<>(List.of(System.nanoTime()));

    /** Ends a part: the time since the one before it, or since the question was there. */
    void end(String part) {
        parts.add(part);
        endsNs.add(System.nanoTime());
    }

    /** The header's value, durations in milliseconds. */
    String header() {
        return IntStream.range(0, parts.size())
                .mapToObj(i -> String.format(
                        Locale.ROOT, "%s;dur=%.1f", parts.get(i), (endsNs.get(i + 1) - endsNs.get(i)) / 1e6))
                .collect(Collectors.joining(", "));
    }
}

package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * A cycle of on-intervals.
 *
 * @param place where it stands
 * @param periodMs length of the cycle (ms)
 * @param onMs lit parts of the cycle, each with start and end (ms)
 * @param phaseMs delay against the clock (ms)
 * @param clock name of a clock shared with other loads
 */
public record FlashEntry(
        Place place,
        Optional<Double> periodMs,
        List<List<Double>> onMs,
        Optional<Double> phaseMs,
        Optional<String> clock) {

    /** Takes missing intervals as none. */
    public FlashEntry {
        onMs = onMs == null ? List.of() : onMs.stream().map(List::copyOf).toList();
    }
}

package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * A shift pattern over days.
 *
 * @param place where it stands
 * @param days how many days it runs
 * @param parked name of the phase that fills each day
 * @param pattern days one after the other
 */
public record RosterEntry(Place place, Optional<Integer> days, Optional<String> parked, List<DayEntry> pattern) {

    /** Takes a missing pattern as an empty one. */
    public RosterEntry {
        pattern = pattern == null ? List.of() : List.copyOf(pattern);
    }
}

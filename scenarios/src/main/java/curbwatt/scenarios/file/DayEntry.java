package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * A day of a shift pattern.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param phases names of the phases that it begins with
 * @param count how many such days in a row
 */
public record DayEntry(Place place, Optional<String> name, List<String> phases, Optional<Integer> count) {

    /** Takes missing phases as none. */
    public DayEntry {
        phases = phases == null ? List.of() : List.copyOf(phases);
    }
}

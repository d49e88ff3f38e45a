package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * Circuits that must stay supplied.
 *
 * @param place where it stands
 * @param circuits names of the circuits
 * @param forMin for how long from the scene's start (min)
 */
public record HoldEntry(Place place, List<String> circuits, Optional<Double> forMin) {

    /** Takes a missing list as an empty one. */
    public HoldEntry {
        circuits = circuits == null ? List.of() : List.copyOf(circuits);
    }
}

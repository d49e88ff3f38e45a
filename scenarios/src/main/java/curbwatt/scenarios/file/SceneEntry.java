package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * What the vehicle goes through.
 *
 * @param place where it stands
 * @param start how the batteries stand at the start
 * @param phases one after the other
 * @param roster days made of the phases
 */
public record SceneEntry(
        Place place, Optional<StartEntry> start, List<PhaseEntry> phases, Optional<RosterEntry> roster) {

    /** Takes missing phases as none. */
    public SceneEntry {
        phases = phases == null ? List.of() : List.copyOf(phases);
    }
}

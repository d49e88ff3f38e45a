package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * A feed and the loads on it.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param node node that it hangs on; left out: the starter node
 * @param feed the wire; left out: no resistance
 * @param fuse the fuse at its start; left out: not followed
 * @param minimumLoad whether it is never shed
 * @param loads the loads
 */
public record CircuitEntry(
        Place place,
        Optional<String> name,
        Optional<NodeWord> node,
        Optional<FeedEntry> feed,
        Optional<FuseEntry> fuse,
        Optional<Boolean> minimumLoad,
        List<LoadEntry> loads) {

    /** Takes a missing list as an empty one. */
    public CircuitEntry {
        loads = loads == null ? List.of() : List.copyOf(loads);
    }
}

package curbwatt.engine.vehicle;

import curbwatt.engine.load.Load;
import curbwatt.engine.quantity.Require;
import curbwatt.engine.wiring.InstalledFuse;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A feed from a node and the loads at its far end.
 *
 * @param name unique within the vehicle
 * @param node node that the feed starts from
 * @param feedOhm resistance of the loop, out and return (Ω), 0 … 10
 * @param fuse the fuse at its start, if it is followed
 * @param loads what hangs on it
 */
public record Circuit(String name, BusNode node, double feedOhm, Optional<InstalledFuse> fuse, List<Load> loads) {

    /** A circuit whose fuse is not followed. */
    public Circuit(String name, BusNode node, double feedOhm, List<Load> loads) {
        this(name, node, feedOhm, Optional.empty(), loads);
    }

    /** A circuit on the starter node. */
    public Circuit(String name, double feedOhm, List<Load> loads) {
        this(name, BusNode.STARTER, feedOhm, loads);
    }

    /** Refuses a resistance out of range. */
    public Circuit {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(node, "node");
        Require.inside("feedOhm", feedOhm, 0, 10, "Ω");
        Objects.requireNonNull(fuse, "fuse");
        loads = List.copyOf(loads);
    }

    /** The same feed with other loads. */
    public Circuit withLoads(List<Load> others) {
        return new Circuit(name, node, feedOhm, fuse, others);
    }
}

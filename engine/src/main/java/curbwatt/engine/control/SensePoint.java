package curbwatt.engine.control;

import java.util.Objects;

/** Where a voltage monitor takes its reading. */
public sealed interface SensePoint {

    /** At the starter node. */
    record Node() implements SensePoint {}

    /** At the equipment node. */
    record EquipmentNode() implements SensePoint {}

    /**
     * At the far end of a circuit's feed, so that the feed's drop is in the reading.
     *
     * @param circuit name of the circuit
     */
    record FeedEnd(String circuit) implements SensePoint {
        /** Refuses a missing name. */
        public FeedEnd {
            Objects.requireNonNull(circuit, "circuit");
        }
    }
}

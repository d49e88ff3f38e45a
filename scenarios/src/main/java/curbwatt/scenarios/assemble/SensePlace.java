package curbwatt.scenarios.assemble;

import curbwatt.engine.control.SensePoint;
import curbwatt.scenarios.file.NodeWord;
import java.util.Optional;

/** Where a device reads the voltage. */
final class SensePlace {
    private SensePlace() {}

    /** Returns a node; the starter node if nothing is said. */
    static SensePoint of(Optional<NodeWord> node) {
        return switch (node.orElse(NodeWord.STARTER)) {
            case STARTER -> new SensePoint.Node();
            case EQUIPMENT -> new SensePoint.EquipmentNode();
        };
    }

    /** Returns the end of a circuit's feed if one is named, otherwise a node. */
    static SensePoint of(Optional<NodeWord> node, Optional<String> feedEndOf) {
        return feedEndOf.<SensePoint>map(SensePoint.FeedEnd::new).orElseGet(() -> of(node));
    }
}

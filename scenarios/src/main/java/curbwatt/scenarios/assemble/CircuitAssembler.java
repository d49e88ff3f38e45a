package curbwatt.scenarios.assemble;

import curbwatt.engine.load.Load;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.wiring.FuseRating;
import curbwatt.engine.wiring.FuseType;
import curbwatt.engine.wiring.InstalledFuse;
import curbwatt.scenarios.file.CircuitEntry;
import curbwatt.scenarios.file.FuseEntry;
import curbwatt.scenarios.file.FuseWord;
import curbwatt.scenarios.file.NodeWord;
import java.util.List;

/**
 * From a circuit entry to a circuit with its feed, fuse and loads.
 *
 * @param guarded catches what the engine refuses
 */
record CircuitAssembler(Guarded guarded) {
    private static final double USUAL_AMBIENT_C = 20;

    /** Returns the circuit. */
    Circuit circuit(CircuitEntry entry) {
        LoadAssembler loads = new LoadAssembler(guarded);
        List<Load> all = entry.loads().stream()
                .flatMap(load -> loads.loads(load).stream())
                .toList();
        double feedOhm = entry.feed()
                .map(feed -> guarded.build(feed.place(), () -> FeedWire.loopOhm(feed)))
                .orElse(0.0);
        return guarded.build(
                entry.place(),
                () -> new Circuit(
                        entry.name().orElseThrow(),
                        node(entry),
                        feedOhm,
                        entry.fuse().map(CircuitAssembler::fuse),
                        all));
    }

    private static BusNode node(CircuitEntry entry) {
        return switch (entry.node().orElse(NodeWord.STARTER)) {
            case STARTER -> BusNode.STARTER;
            case EQUIPMENT -> BusNode.EQUIPMENT;
        };
    }

    private static InstalledFuse fuse(FuseEntry entry) {
        FuseType type = switch (entry.kind().orElse(FuseWord.BLADE)) {
            case BLADE -> FuseType.BLADE;
            case MINI -> FuseType.MINI;
            case MAXI -> FuseType.MAXI;
        };
        return new InstalledFuse(
                new FuseRating(type, entry.ratingA().orElseThrow()),
                entry.ambientC().orElse(USUAL_AMBIENT_C));
    }
}

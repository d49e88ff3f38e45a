package curbwatt.scenarios.assemble;

import curbwatt.engine.budget.CircuitDemand;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.wiring.CircuitCurrent;
import curbwatt.engine.wiring.CircuitPlan;
import curbwatt.engine.wiring.DropLimit;
import curbwatt.engine.wiring.InstalledFuse;
import curbwatt.engine.wiring.WireRun;
import curbwatt.engine.wiring.WireSpace;
import curbwatt.scenarios.file.CircuitEntry;
import curbwatt.scenarios.file.FeedEntry;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * From circuits whose wire is known to what can be held against the rules for wires and fuses.
 *
 * @param guarded catches what the engine refuses
 * @param vehicle the assembled vehicle
 * @param scene what it goes through, which says what the circuits draw
 */
record PlanAssembler(Guarded guarded, Vehicle vehicle, Scene scene) {
    private static final double SYSTEM_V = 12;
    private static final double USUAL_AMBIENT_C = 20;

    /** Returns one plan for each circuit with a wire, in the file's order. */
    List<CircuitPlan> plans(List<CircuitEntry> entries) {
        return IntStream.range(0, entries.size())
                .boxed()
                .flatMap(i -> plan(entries.get(i), vehicle.circuits().get(i)))
                .toList();
    }

    private Stream<CircuitPlan> plan(CircuitEntry entry, Circuit circuit) {
        return entry.feed().stream()
                .flatMap(feed -> guarded
                        .build(
                                feed.place(),
                                () -> FeedWire.run(feed).stream()
                                        .map(run -> plan(entry, feed, run, circuit))
                                        .toList())
                        .stream());
    }

    private CircuitPlan plan(CircuitEntry entry, FeedEntry feed, WireRun run, Circuit circuit) {
        CircuitDemand demand = CircuitDemand.of(vehicle, scene, circuit);
        Optional<InstalledFuse> fuse = circuit.fuse();
        return new CircuitPlan(
                circuit.name(),
                // with inrush counted in the mean alone, a mean can lie above the peak
                new CircuitCurrent(
                        demand.meanA(), demand.heatingA(), Math.max(demand.heatingA(), demand.peakA()), demand.peakS()),
                run,
                new CircuitPlan.Place(
                        feed.inEngineSpace().orElse(false)
                                ? WireSpace.INSIDE_ENGINE_SPACE
                                : WireSpace.OUTSIDE_ENGINE_SPACE,
                        1 + feed.bundledWith().orElse(0),
                        FeedWire.conductorC(feed),
                        fuse.map(InstalledFuse::ambientC).orElse(USUAL_AMBIENT_C)),
                fuse,
                // what no device may shed is what safety depends on
                entry.minimumLoad().orElse(false) ? DropLimit.CRITICAL : DropLimit.OTHER,
                SYSTEM_V);
    }
}

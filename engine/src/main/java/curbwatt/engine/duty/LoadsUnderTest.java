package curbwatt.engine.duty;

import curbwatt.engine.load.Load;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A vehicle with the loads of some circuits on and the other switchable loads off; loads that no stage switches stay on
 * wherever they are, and so do standby currents.
 */
final class LoadsUnderTest {

    private static final Set<String> NEVER = Set.of("not in this test");

    private LoadsUnderTest() {}

    /**
     * The vehicle with the loads of these circuits on.
     *
     * @param more further circuits for the test's own instruments
     * @throws IllegalArgumentException if no circuit is named, or one that the vehicle does not have
     */
    static Vehicle in(Vehicle vehicle, Set<String> on, Circuit... more) {
        List<String> known = vehicle.circuits().stream().map(Circuit::name).toList();
        if (on.isEmpty() || !known.containsAll(on)) {
            throw new IllegalArgumentException(
                    "circuits under test are " + on.stream().sorted().toList() + "; name at least one of " + known);
        }
        List<Circuit> circuits = new ArrayList<>();
        for (Circuit circuit : vehicle.circuits()) {
            boolean tested = on.contains(circuit.name());
            List<Load> loads =
                    circuit.loads().stream().map(load -> switched(load, tested)).toList();
            circuits.add(circuit.withLoads(loads));
        }
        circuits.addAll(List.of(more));
        EngineEquipment engine = vehicle.engine();
        return vehicle.withCircuits(circuits)
                .withEngine(
                        new EngineEquipment(engine.highIdle(), Optional.empty(), engine.fuel(), engine.underHood()));
    }

    private static Load switched(Load load, boolean on) {
        if (load.stages().isEmpty()) {
            return load;
        }
        return new Load(
                load.name(),
                load.ratedCurrentA(),
                load.ratedVoltageV(),
                load.voltageExponent(),
                load.standbyCurrentA(),
                load.dropOut(),
                load.pattern(),
                on ? Set.of() : NEVER,
                load.inrush(),
                load.heads());
    }
}

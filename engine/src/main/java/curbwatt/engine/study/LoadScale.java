package curbwatt.engine.study;

import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.vehicle.Circuit;

/**
 * Every load draws more, or less, than its label says: rated, standby and between alike.
 *
 * @param factor what the currents are multiplied by, 0 or more
 */
public record LoadScale(double factor) implements Variation {

    @Override
    public Simulation of(Simulation base) {
        return base.with(base.vehicle()
                .withCircuits(
                        base.vehicle().circuits().stream().map(this::scaled).toList()));
    }

    private Circuit scaled(Circuit circuit) {
        return circuit.withLoads(
                circuit.loads().stream().map(load -> load.drawing(factor)).toList());
    }
}

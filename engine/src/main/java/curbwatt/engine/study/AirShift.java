package curbwatt.engine.study;

import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;

/**
 * Air and batteries are warmer throughout.
 *
 * @param shiftK by so much (K); negative: colder
 */
public record AirShift(double shiftK) implements Variation {

    @Override
    public Simulation of(Simulation base) {
        Scene scene = base.scene();
        InitialState start = scene.start();
        return base.in(scene.from(new InitialState(start.stateOfChargeFraction(), start.batteryC() + shiftK))
                .withPhases(scene.phases().stream()
                        .map(phase -> phase.warmerBy(shiftK))
                        .toList()));
    }
}

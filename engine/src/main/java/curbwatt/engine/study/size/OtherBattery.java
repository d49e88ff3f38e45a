package curbwatt.engine.study.size;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Variation;
import java.util.Objects;

/**
 * Another battery sits in a seat, in the condition of the one before.
 *
 * @param seat which one is meant
 * @param parameters the other battery
 */
public record OtherBattery(Seat seat, BatteryParameters parameters) implements Variation {

    /** Refuses missing parts. */
    public OtherBattery {
        Objects.requireNonNull(seat, "seat");
        Objects.requireNonNull(parameters, "parameters");
    }

    @Override
    public Simulation of(Simulation base) {
        return base.with(seat.with(
                base.vehicle(),
                new Battery(parameters, seat.in(base.vehicle()).battery().condition())));
    }
}

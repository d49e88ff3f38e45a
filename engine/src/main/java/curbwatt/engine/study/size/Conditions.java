package curbwatt.engine.study.size;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.quantity.Require;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.LoadScale;
import curbwatt.engine.study.Variation;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Objects;

/**
 * Age, temperature and load that the battery has to stand.
 *
 * @param seat the battery that is aged
 * @param capacityHealthFraction its capacity over that of the new one, 0.05 … 1.2
 * @param resistanceGrowthFactor its resistance over that of the new one, 0.5 … 20
 * @param batteryC temperature of the batteries at the scene's start (°C), −40 … 70; the air is shifted by as much
 * @param loadFactor what all load currents are multiplied by, 0 … 5
 */
public record Conditions(
        Seat seat, double capacityHealthFraction, double resistanceGrowthFactor, double batteryC, double loadFactor)
        implements Variation {

    private static final double COLDEST_AIR_C = -50;
    private static final double HOTTEST_AIR_C = 110;

    /** Refuses figures out of range. */
    public Conditions {
        Objects.requireNonNull(seat, "seat");
        Require.inside("capacityHealthFraction", capacityHealthFraction, 0.05, 1.2, "");
        Require.inside("resistanceGrowthFactor", resistanceGrowthFactor, 0.5, 20, "");
        Require.inside("batteryC", batteryC, -40, 70, "°C");
        Require.inside("loadFactor", loadFactor, 0, 5, "");
    }

    /** The same for a new battery. */
    public Conditions asNew() {
        return new Conditions(seat, 1, 1, batteryC, loadFactor);
    }

    /** The same at another temperature (°C). */
    public Conditions at(double otherC) {
        return new Conditions(seat, capacityHealthFraction, resistanceGrowthFactor, otherC, loadFactor);
    }

    @Override
    public Simulation of(Simulation base) {
        Vehicle vehicle = base.vehicle();
        Battery battery = seat.in(vehicle).battery();
        BatteryCondition aged = new BatteryCondition(
                capacityHealthFraction,
                resistanceGrowthFactor,
                battery.condition().selfDischargePerMonthFraction());
        Simulation older = base.with(seat.with(vehicle, new Battery(battery.parameters(), aged)));
        return new LoadScale(loadFactor).of(shifted(older));
    }

    private Simulation shifted(Simulation base) {
        Scene scene = base.scene();
        double shiftK = batteryC - scene.start().batteryC();
        return base.in(scene.from(new InitialState(scene.start().stateOfChargeFraction(), batteryC))
                .withPhases(scene.phases().stream()
                        .map(phase -> phase.in(new AirTemperature(phase.air().points().stream()
                                .map(point -> new AirTemperature.Point(point.timeS(), air(point.airC() + shiftK)))
                                .toList())))
                        .toList()));
    }

    /** Air no colder or warmer than a scene may have. */
    private static double air(double wantedC) {
        return Math.max(COLDEST_AIR_C, Math.min(HOTTEST_AIR_C, wantedC));
    }
}

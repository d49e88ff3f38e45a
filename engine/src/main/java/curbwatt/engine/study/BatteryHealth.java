package curbwatt.engine.study;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Vehicle;

/**
 * Both batteries are worse, or better, than the scenario says.
 *
 * @param capacityFactor what the capacity is multiplied by, above 0
 * @param resistanceFactor what the resistance is multiplied by, above 0
 */
public record BatteryHealth(double capacityFactor, double resistanceFactor) implements Variation {

    @Override
    public Simulation of(Simulation base) {
        Vehicle vehicle = base.vehicle();
        return base.with(vehicle.withBattery(worn(vehicle.battery()))
                .withAuxiliary(vehicle.auxiliary().map(this::worn)));
    }

    private AuxiliaryBattery worn(AuxiliaryBattery auxiliary) {
        return auxiliary.with(worn(auxiliary.installation()));
    }

    private BatteryInstallation worn(BatteryInstallation place) {
        BatteryCondition now = place.battery().condition();
        return place.with(new Battery(
                place.battery().parameters(),
                new BatteryCondition(
                        now.capacityHealthFraction() * capacityFactor,
                        now.resistanceGrowthFactor() * resistanceFactor,
                        now.selfDischargePerMonthFraction())));
    }
}

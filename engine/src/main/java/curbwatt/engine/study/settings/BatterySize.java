package curbwatt.engine.study.settings;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Variation;
import curbwatt.engine.vehicle.BatteryInstallation;

/**
 * Larger batteries of the same make: so many times the capacity, and as much less resistance, as with several in
 * parallel.
 *
 * @param factor what the capacity is multiplied by, above 0
 */
public record BatterySize(double factor) implements Variation {

    @Override
    public Simulation of(Simulation base) {
        return base.with(base.vehicle()
                .withBattery(sized(base.vehicle().battery()))
                .withAuxiliary(
                        base.vehicle().auxiliary().map(auxiliary -> auxiliary.with(sized(auxiliary.installation())))));
    }

    private BatteryInstallation sized(BatteryInstallation place) {
        BatteryParameters now = place.battery().parameters();
        return place.with(new Battery(
                new BatteryParameters(
                        now.chemistry(),
                        factor * now.ratedC20Ah(),
                        factor * now.capacityAh(),
                        factor * now.totalChargeAh(),
                        now.peukertExponent(),
                        now.modes(),
                        now.resistanceOhm() / factor),
                place.battery().condition()));
    }
}

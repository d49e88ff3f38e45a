package curbwatt.engine.study.size;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Optional;

/**
 * Which battery is sized.
 *
 * @param isAuxiliary whether it is the auxiliary battery; otherwise it is the starter battery
 */
public record Seat(boolean isAuxiliary) {

    /** The battery that carries the equipment: the auxiliary one, or the only one. */
    public static Seat of(Vehicle vehicle) {
        return new Seat(vehicle.auxiliary().isPresent());
    }

    /** The battery that sits there. */
    public BatteryInstallation in(Vehicle vehicle) {
        return isAuxiliary ? vehicle.auxiliary().orElseThrow().installation() : vehicle.battery();
    }

    /** Whether a circuit hangs on its node. */
    public boolean feeds(Circuit circuit) {
        return (circuit.node() == BusNode.EQUIPMENT) == isAuxiliary;
    }

    /** The same vehicle with another battery there; the protection inside a pack grows with it. */
    public Vehicle with(Vehicle vehicle, Battery battery) {
        BatteryInstallation place = in(vehicle).with(battery);
        if (!isAuxiliary) {
            return vehicle.withBattery(place);
        }
        AuxiliaryBattery auxiliary = vehicle.auxiliary().orElseThrow();
        double times = battery.parameters().ratedC20Ah() / parameters(vehicle).ratedC20Ah();
        return vehicle.withAuxiliary(Optional.of(new AuxiliaryBattery(
                place,
                auxiliary.startChargeFraction(),
                auxiliary.protection().map(protection -> protection.times(times)),
                auxiliary.linkName(),
                auxiliary.link())));
    }

    private BatteryParameters parameters(Vehicle vehicle) {
        return in(vehicle).battery().parameters();
    }
}

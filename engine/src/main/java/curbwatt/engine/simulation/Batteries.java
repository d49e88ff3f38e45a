package curbwatt.engine.simulation;

import curbwatt.engine.scene.InitialState;
import curbwatt.engine.vehicle.Vehicle;

/** The batteries of a vehicle between steps: the starter's, and the auxiliary one where there is one. */
final class Batteries {

    private final BatteryWork starter;
    private final BatteryWork auxiliary;

    Batteries(Vehicle vehicle, InitialState start) {
        starter = new BatteryWork(vehicle.battery(), start);
        auxiliary = vehicle.auxiliary()
                .map(second -> new BatteryWork(
                        second.installation(), new InitialState(second.startChargeFraction(), start.batteryC())))
                .orElse(null);
    }

    private Batteries(BatteryWork starter, BatteryWork auxiliary) {
        this.starter = starter;
        this.auxiliary = auxiliary;
    }

    Batteries copy() {
        return new Batteries(starter.copy(), auxiliary == null ? null : auxiliary.copy());
    }

    void takeFrom(Batteries other) {
        starter.takeFrom(other.starter);
        if (auxiliary != null) {
            auxiliary.takeFrom(other.auxiliary);
        }
    }

    BatteryWork starter() {
        return starter;
    }

    BatteryWork auxiliary() {
        return auxiliary;
    }

    boolean areTwo() {
        return auxiliary != null;
    }

    /** Lets the main currents of a solution flow for a time. */
    void advance(OperatingPoint point, double durationS) {
        advance(point, point, durationS);
    }

    /** Lets the mean of the main currents of two solutions flow for a time. */
    void advance(OperatingPoint start, OperatingPoint end, double durationS) {
        starter.advance(0.5 * (start.starter.mainA + end.starter.mainA), durationS);
        if (auxiliary != null) {
            auxiliary.advance(0.5 * (start.equipment.mainA + end.equipment.mainA), durationS);
        }
    }

    /** Lets the temperatures follow the air round each, outside or under the hood, for a time. */
    void warm(double airC, double underHoodC, double durationS) {
        starter.warm(airC, underHoodC, durationS);
        if (auxiliary != null) {
            auxiliary.warm(airC, underHoodC, durationS);
        }
    }
}

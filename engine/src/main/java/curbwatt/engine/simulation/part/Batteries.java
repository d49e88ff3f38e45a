package curbwatt.engine.simulation.part;

import curbwatt.engine.scene.InitialState;
import curbwatt.engine.vehicle.Vehicle;

/** The batteries of a vehicle between steps: the starter's, and the auxiliary one where there is one. */
public final class Batteries {

    private final BatteryWork starter;
    private final BatteryWork auxiliary;

    public Batteries(Vehicle vehicle, InitialState start) {
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

    public Batteries copy() {
        return new Batteries(starter.copy(), auxiliary == null ? null : auxiliary.copy());
    }

    public void takeFrom(Batteries other) {
        starter.takeFrom(other.starter);
        if (auxiliary != null) {
            auxiliary.takeFrom(other.auxiliary);
        }
    }

    public BatteryWork starter() {
        return starter;
    }

    public BatteryWork auxiliary() {
        return auxiliary;
    }

    public boolean areTwo() {
        return auxiliary != null;
    }

    /** Lets the main currents of a solution flow for a time. */
    public void advance(OperatingPoint point, double durationS) {
        advance(point, point, durationS);
    }

    /** Lets the mean of the main currents of two solutions flow for a time. */
    public void advance(OperatingPoint start, OperatingPoint end, double durationS) {
        starter.advance(0.5 * (start.starter.mainA + end.starter.mainA), durationS);
        if (auxiliary != null) {
            auxiliary.advance(0.5 * (start.equipment.mainA + end.equipment.mainA), durationS);
        }
    }

    /**
     * Takes the charges, not the temperatures, to where they are after currents that run along parabolas have flowed from another
     * state on, through a share of the time that these span.
     */
    public void advanceFrom(
            Batteries start, DriveCurve starterCurve, DriveCurve auxiliaryCurve, double share, double wholeS) {
        starter.advanceFrom(start.starter, starterCurve, share, wholeS);
        if (auxiliary != null) {
            auxiliary.advanceFrom(start.auxiliary, auxiliaryCurve, share, wholeS);
        }
    }

    /** Lets the temperatures follow the air round each, outside or under the hood, for a time. */
    public void warm(double airC, double underHoodC, double durationS) {
        starter.warm(airC, underHoodC, durationS);
        if (auxiliary != null) {
            auxiliary.warm(airC, underHoodC, durationS);
        }
    }

    /** The same in air that changes: that of the time's first half, and that of its second. */
    public void warm(double airC, double underHoodC, double laterAirC, double laterUnderHoodC, double durationS) {
        starter.warm(airC, underHoodC, laterAirC, laterUnderHoodC, durationS);
        if (auxiliary != null) {
            auxiliary.warm(airC, underHoodC, laterAirC, laterUnderHoodC, durationS);
        }
    }
}

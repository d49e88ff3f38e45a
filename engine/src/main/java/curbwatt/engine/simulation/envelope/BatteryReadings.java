package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.NodePoint;
import curbwatt.engine.simulation.part.OperatingPoint;

/** Charge and warmth of both batteries at an instant of a long step. */
final class BatteryReadings {

    private static final double SECONDS_PER_HOUR = 3600;

    private double charge;
    private double batteryC;
    private double auxiliaryCharge;
    private double auxiliaryC;

    /** Takes what they are at the start or the end of a step. */
    void take(Batteries at) {
        charge = at.starter().stateOfChargeFraction();
        batteryC = at.starter().temperatureC();
        if (at.areTwo()) {
            auxiliaryCharge = at.auxiliary().stateOfChargeFraction();
            auxiliaryC = at.auxiliary().temperatureC();
        }
    }

    /**
     * Passes a part of it. The charge goes with what was drawn in that part; the mean path along the step would be off by what a
     * radio's call takes.
     *
     * @param mean means over the part
     * @param at the batteries at its end, on their mean path
     */
    void pass(OperatingPoint mean, double lengthS, Batteries at) {
        charge -= drawn(mean.starter, lengthS, at.starter());
        batteryC = at.starter().temperatureC();
        if (at.areTwo()) {
            auxiliaryCharge -= drawn(mean.equipment, lengthS, at.auxiliary());
            auxiliaryC = at.auxiliary().temperatureC();
        }
    }

    private static double drawn(NodePoint mean, double lengthS, BatteryWork battery) {
        return (mean.mainA + battery.selfDischargeA()) * lengthS / SECONDS_PER_HOUR / battery.battery.capacityAh();
    }

    double charge() {
        return charge;
    }

    double batteryC() {
        return batteryC;
    }

    double auxiliaryCharge() {
        return auxiliaryCharge;
    }

    double auxiliaryC() {
        return auxiliaryC;
    }
}

package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.Batteries;

/** Charge and warmth of both batteries at an instant of a long step. */
final class BatteryReadings {

    private double charge;
    private double batteryC;
    private double auxiliaryCharge;
    private double auxiliaryC;

    void take(Batteries at) {
        charge = at.starter().stateOfChargeFraction();
        batteryC = at.starter().temperatureC();
        if (at.areTwo()) {
            auxiliaryCharge = at.auxiliary().stateOfChargeFraction();
            auxiliaryC = at.auxiliary().temperatureC();
        }
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

package curbwatt.engine.scene;

import curbwatt.engine.quantity.Require;

/**
 * How the battery stands at the scene's start: at rest, at a charge and a temperature.
 *
 * @param stateOfChargeFraction state of charge, 0.05 … 1
 * @param batteryC battery temperature (°C), −40 … 70
 */
public record InitialState(double stateOfChargeFraction, double batteryC) {
    /** Refuses figures out of range. */
    public InitialState {
        Require.inside("stateOfChargeFraction", stateOfChargeFraction, 0.05, 1, "");
        Require.inside("batteryC", batteryC, -40, 70, "°C");
    }
}

package curbwatt.engine.protection;

import curbwatt.engine.quantity.Require;

/**
 * What a pack's protection measures: inside its switches, at its cells.
 *
 * @param voltageV voltage of the cells in series, V
 * @param currentA current through the pack, A, positive when it discharges
 * @param temperatureC temperature of the cells, °C
 */
public record PackReading(double voltageV, double currentA, double temperatureC) {
    /** Refuses numbers that are not finite. */
    public PackReading {
        Require.finite("voltageV", voltageV, "V");
        Require.finite("currentA", currentA, "A");
        Require.finite("temperatureC", temperatureC, "°C");
    }

    double of(Reason.Quantity quantity) {
        return switch (quantity) {
            case VOLTAGE -> voltageV;
            case DISCHARGE_CURRENT -> Math.max(currentA, 0);
            case CHARGE_CURRENT -> Math.max(-currentA, 0);
            case TEMPERATURE -> temperatureC;
        };
    }
}

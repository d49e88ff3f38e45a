package curbwatt.engine.battery;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * What distinguishes one battery, as new, from others of its chemistry.
 *
 * @param chemistry kind of battery
 * @param ratedC20Ah charge on the label, Ah: 20 h to 10.5 V (LFP 10.0 V) at 25 °C; scales gassing
 * @param capacityAh C, Ah at 25 °C: the charge between state of charge 1 and 0
 * @param totalChargeAh A, Ah at 25 °C: the charge that an endlessly slow discharge would give; A ≥ C
 * @param peukertExponent exponent of the Peukert law that the modes follow, dimensionless, 1 or above
 * @param modes charge out of reach for now
 * @param resistanceOhm ohmic resistance of the full battery at 25 °C, Ω
 */
public record BatteryParameters(
        Chemistry chemistry,
        double ratedC20Ah,
        double capacityAh,
        double totalChargeAh,
        double peukertExponent,
        DiffusionModes modes,
        double resistanceOhm) {
    /** Refuses impossible values. */
    public BatteryParameters {
        Objects.requireNonNull(chemistry, "chemistry");
        Objects.requireNonNull(modes, "modes");
        Require.positive("ratedC20Ah", ratedC20Ah, "Ah");
        Require.positive("capacityAh", capacityAh, "Ah");
        Require.inside("totalChargeAh", totalChargeAh, capacityAh, Double.MAX_VALUE, "Ah");
        Require.inside("peukertExponent", peukertExponent, 1, 3, "");
        Require.positive("resistanceOhm", resistanceOhm, "Ohm");
    }

    /**
     * Returns a battery of the same kind and so many times the size: as many of these side by side. The modes are
     * dimensionless and stay, the resistance shrinks.
     *
     * @param factor times the size, above 0
     */
    public BatteryParameters times(double factor) {
        Require.positive("factor", factor, "");
        return new BatteryParameters(
                chemistry,
                factor * ratedC20Ah,
                factor * capacityAh,
                factor * totalChargeAh,
                peukertExponent,
                modes,
                resistanceOhm / factor);
    }
}

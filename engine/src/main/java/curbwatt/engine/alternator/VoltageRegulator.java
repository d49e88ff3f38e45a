package curbwatt.engine.alternator;

import curbwatt.engine.quantity.Require;

/**
 * Set-point against temperature: {@code at25V + slopeVPerK · (T − 25)}, clamped.
 *
 * <p>Published slopes for 12 V run from −3.5 to −16 mV/K; −10 mV/K is a usual middle.
 *
 * @param at25V set-point at 25 °C (V), 12.5 … 16
 * @param slopeVPerK temperature coefficient (V/K), −0.05 … 0
 * @param lowestV lower clamp (V)
 * @param highestV upper clamp (V), not below {@code lowestV}
 */
public record VoltageRegulator(double at25V, double slopeVPerK, double lowestV, double highestV) {

    /** A usual temperature coefficient (V/K). */
    public static final double USUAL_SLOPE_V_PER_K = -0.010;

    /** Usual lower clamp (V): the low end of published windows at 80 °C; common practice. */
    public static final double USUAL_LOWEST_V = 13.0;

    /** Usual upper clamp (V): the high end of published windows in the cold; common practice. */
    public static final double USUAL_HIGHEST_V = 15.2;

    /** Refuses figures out of range. */
    public VoltageRegulator {
        Require.inside("setPointV", at25V, 12.5, 16, "V");
        Require.inside("slopeVPerK", slopeVPerK, -0.05, 0, "V/K");
        Require.inside("lowestV", lowestV, 12, 16, "V");
        Require.inside("highestV", highestV, lowestV, 16, "V");
    }

    /** Set-point with the usual slope and clamps. */
    public static VoltageRegulator usual(double at25V) {
        return new VoltageRegulator(
                at25V, USUAL_SLOPE_V_PER_K, Math.min(USUAL_LOWEST_V, at25V), Math.max(USUAL_HIGHEST_V, at25V));
    }

    /** Voltage that is held at a temperature (V). */
    public double setPointV(double temperatureC) {
        return Math.min(highestV, Math.max(lowestV, at25V + slopeVPerK * (temperatureC - 25)));
    }
}

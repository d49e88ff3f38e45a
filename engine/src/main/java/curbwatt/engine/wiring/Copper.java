package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;

/**
 * Annealed copper of 100 % conductivity by the International Annealed Copper Standard (IEC 60028, NBS Handbook 100).
 */
public final class Copper {
    private static final double RESISTIVITY_20C_OHM_M = 1.7241e-8;
    private static final double PER_KELVIN_AT_20C = 0.00393;
    private static final double COLDEST_C = -60;
    private static final double HOTTEST_C = 200;

    private Copper() {}

    /**
     * Returns the resistivity, Ω·m.
     *
     * @param temperatureC conductor temperature, °C, −60 to 200
     */
    public static double resistivityOhmM(double temperatureC) {
        Require.inside("temperatureC", temperatureC, COLDEST_C, HOTTEST_C, "°C");
        return RESISTIVITY_20C_OHM_M * (1 + PER_KELVIN_AT_20C * (temperatureC - 20));
    }
}

package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;

/** What a conductor is made of. */
public enum WireMaterial {
    /** Annealed, of 100 % conductivity by the International Annealed Copper Standard (IEC 60028, NBS Handbook 100). */
    COPPER(1.7241e-8, 0.00393),
    /** Of 61 % conductivity (IEC 60889; the fifth digit of the resistivity is recalled). */
    ALUMINIUM(2.8264e-8, 0.00403);

    private static final double COLDEST_C = -60;
    private static final double HOTTEST_C = 200;

    private final double resistivity20COhmM;
    private final double perKelvinAt20C;

    WireMaterial(double resistivity20COhmM, double perKelvinAt20C) {
        this.resistivity20COhmM = resistivity20COhmM;
        this.perKelvinAt20C = perKelvinAt20C;
    }

    /**
     * Returns the resistivity, Ω·m.
     *
     * @param temperatureC conductor temperature, °C, −60 to 200
     */
    public double resistivityOhmM(double temperatureC) {
        Require.inside("temperatureC", temperatureC, COLDEST_C, HOTTEST_C, "°C");
        return resistivity20COhmM * (1 + perKelvinAt20C * (temperatureC - 20));
    }

    /** Returns the area of copper that has the same resistance at 20 °C as an area of this material, mm². */
    double copperAreaMm2(double areaMm2) {
        return areaMm2 * COPPER.resistivity20COhmM / resistivity20COhmM;
    }
}

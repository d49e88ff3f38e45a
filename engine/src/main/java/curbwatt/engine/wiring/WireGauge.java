package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;

/**
 * American wire gauge: diameter 0.127 mm · 92^((36 − n)/39) (ASTM B258).
 *
 * @param number n, −3 (called 4/0) to 40; 0, −1, −2, −3 are 1/0, 2/0, 3/0, 4/0
 */
public record WireGauge(int number) implements WireSize {
    private static final double DIAMETER_36_MM = 0.127;

    /** Refuses gauges outside the standard. */
    public WireGauge {
        Require.inside("number", number, -3, 40, "AWG");
    }

    /** Returns the diameter of the solid conductor, mm. */
    public double diameterMm() {
        return DIAMETER_36_MM * Math.pow(92, (36 - number) / 39.0);
    }

    /** Returns the conductor's area, mm². */
    @Override
    public double areaMm2() {
        double diameterMm = diameterMm();
        return Math.PI / 4 * diameterMm * diameterMm;
    }

    @Override
    public String label() {
        return "AWG " + name(number);
    }

    static String name(int number) {
        return number > 0 ? Integer.toString(number) : (1 - number) + "/0";
    }
}

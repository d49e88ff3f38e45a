package curbwatt.engine.sizing;

import curbwatt.engine.numeric.LinearTable;
import java.util.List;

/**
 * By how much a lead-acid battery must be larger because it is cold: table 1 of IEEE 485 for cells of 1.215 gravity,
 * based on 25 °C (77 °F), straight lines between its rows. Rows from 40 °F up were read in a public copy; 25 to 35 °F are
 * recalled, and agree with a published fit within 0.02.
 */
public final class TemperatureCorrection {

    private static final LinearTable BY_FAHRENHEIT = new LinearTable(
            List.of(
                    25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 55.0, 60.0, 65.0, 68.0, 70.0, 75.0, 77.0, 80.0, 85.0, 90.0,
                    95.0, 100.0, 105.0, 110.0, 115.0, 120.0, 125.0),
            List.of(
                    1.520, 1.430, 1.350, 1.300, 1.250, 1.190, 1.150, 1.110, 1.080, 1.056, 1.040, 1.011, 1.000, 0.980,
                    0.960, 0.940, 0.930, 0.910, 0.890, 0.880, 0.870, 0.860, 0.850));

    private TemperatureCorrection() {}

    /**
     * The table's factor; a battery colder or warmer than its ends is taken to be at the end.
     *
     * @param temperatureC temperature of the cells (°C)
     */
    public static double factor(double temperatureC) {
        double fahrenheit = 1.8 * temperatureC + 32;
        return BY_FAHRENHEIT.at(Math.max(BY_FAHRENHEIT.first(), Math.min(BY_FAHRENHEIT.last(), fahrenheit)));
    }

    /** The factor as the methods use it: nothing is taken off because it is warm. */
    public static double withoutCredit(double temperatureC) {
        return Math.max(1, factor(temperatureC));
    }

    /** Coldest temperature of the table (°C). */
    public static double coldestC() {
        return (BY_FAHRENHEIT.first() - 32) / 1.8;
    }
}

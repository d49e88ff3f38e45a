package curbwatt.engine.alternator;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A straight set-point goes through every published window, with the set-point at 25 °C and the slope of that source.
 * The value listed is the window's middle, the tolerance half its width.
 */
class RegulatorPublishedTest {
    @ParameterizedTest
    @CsvSource({"65, 14.1, 14.9", "86, 13.9, 14.7", "105, 13.7, 14.5", "125, 13.5, 14.3", "145, 13.4, 14.2"})
    void liftTruck(double fahrenheit, double lowV, double highV, TestReporter reporter) {
        window(14.37, -0.0163, celsius(fahrenheit), lowV, highV, "US Army TM 10-3930-621-12", reporter);
    }

    /** A 24 V machine: half of the printed voltage is one 12 V battery's share. */
    @ParameterizedTest
    @CsvSource({
        "0, 29.20, 30.12",
        "20, 28.86, 29.73",
        "40, 28.64, 29.36",
        "60, 28.32, 28.98",
        "80, 28.00, 28.60",
        "100, 27.68, 28.32",
        "120, 27.32, 28.04"
    })
    void generatorSet(double fahrenheit, double lowV, double highV, TestReporter reporter) {
        window(14.18, -0.0148, celsius(fahrenheit), lowV / 2, highV / 2, "US Army TM 9-6115-464-12, halved", reporter);
    }

    @ParameterizedTest
    @CsvSource({
        "14.10, -0.0104, -20, 14.0, 15.1, a car maker's public manual",
        "14.10, -0.0104, 20, 13.7, 14.6, a car maker's public manual",
        "14.10, -0.0104, 60, 13.2, 14.3, a car maker's public manual",
        "14.10, -0.0104, 80, 12.9, 14.1, a car maker's public manual",
        "14.47, -0.0067, -20, 14.2, 15.4, a second car maker's public manual",
        "14.47, -0.0067, 20, 14.0, 15.0, a second car maker's public manual",
        "14.47, -0.0067, 60, 13.7, 14.9, a second car maker's public manual",
        "14.47, -0.0067, 80, 13.5, 14.7, a second car maker's public manual",
        "14.35, -0.0100, 20, 14.1, 14.7, a marine engine maker's public manual",
        "14.35, -0.0100, 30, 14.0, 14.6, a marine engine maker's public manual",
        "14.55, -0.0035, 25, 14.25, 14.85, a third car maker's public manual"
    })
    void makers(
            double at25V,
            double slopeVPerK,
            double temperatureC,
            double lowV,
            double highV,
            String source,
            TestReporter reporter) {
        window(at25V, slopeVPerK, temperatureC, lowV, highV, source, reporter);
    }

    /** The usual slope, −10 mV/K, with 14.2 V at 25 °C, stays within the windows of both car makers' full tables. */
    @ParameterizedTest
    @CsvSource({
        "-20, 14.0, 15.1", "20, 13.7, 14.6", "60, 13.2, 14.3", "80, 12.9, 14.1",
        "-20, 14.2, 15.4", "20, 14.0, 15.0", "60, 13.7, 14.9", "80, 13.5, 14.7"
    })
    void usualSlope(double temperatureC, double lowV, double highV, TestReporter reporter) {
        window(
                14.2,
                VoltageRegulator.USUAL_SLOPE_V_PER_K,
                temperatureC,
                lowV,
                highV,
                "two car makers' public manuals",
                reporter);
    }

    private static void window(
            double at25V,
            double slopeVPerK,
            double temperatureC,
            double lowV,
            double highV,
            String source,
            TestReporter reporter) {
        new Published(
                        "Regulator set-point",
                        "%.2f V at 25 °C, %.1f mV/K: middle of the window at %.1f °C"
                                .formatted(at25V, 1000 * slopeVPerK, temperatureC),
                        "V",
                        (lowV + highV) / 2,
                        (highV - lowV) / 2,
                        Obtained.SEEN,
                        source)
                .check(
                        new VoltageRegulator(
                                        at25V,
                                        slopeVPerK,
                                        VoltageRegulator.USUAL_LOWEST_V,
                                        VoltageRegulator.USUAL_HIGHEST_V)
                                .setPointV(temperatureC),
                        reporter);
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }
}

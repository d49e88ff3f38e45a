package curbwatt.engine.battery.label;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An iron-phosphate pack of 100 Ah and 15 mΩ. */
class LfpPublishedTest {
    private static final String TOPIC = "LFP";
    private static final int CELLS = 4;

    private static Battery pack() {
        return Battery.asNew(LfpFit.of(LfpLabel.ofTwentyHours(100, 0.015)));
    }

    @ParameterizedTest
    @CsvSource({
        "100, 13.6",
        "99, 13.6",
        "90, 13.4",
        "70, 13.3",
        "40, 13.2",
        "30, 13.0",
        "20, 12.8",
        "10, 12.0",
        "0, 10.0"
    })
    void restVoltageOfPacks(double percent, double voltageV, TestReporter reporter) {
        rest(
                "pack at rest, " + percent + " % charged",
                percent,
                voltageV,
                1e-9,
                "public chart of 12.8 V packs",
                reporter);
    }

    /**
     * The pack chart is above the cell from 40 % up, by up to 0.27 V near full, and below it under 20 %, by up to 1.4
     * V.
     */
    @ParameterizedTest
    @CsvSource({
        "95.7, 3.320, 0.27",
        "91.5, 3.316, 0.20",
        "82.9, 3.306, 0.20",
        "74.2, 3.290, 0.20",
        "65.6, 3.278, 0.20",
        "57.1, 3.274, 0.20",
        "48.5, 3.269, 0.20",
        "39.8, 3.263, 0.20",
        "31.2, 3.240, 0.20",
        "22.6, 3.220, 0.20",
        "13.9, 3.190, 0.45",
        "9.6, 3.170, 0.80",
        "5.4, 3.120, 1.4",
        "1.0, 2.900, 1.5"
    })
    void restVoltageOfOneCell(double percent, double cellV, double toleranceV, TestReporter reporter) {
        rest(
                "four cells at rest, " + percent + " % charged",
                percent,
                CELLS * cellV,
                toleranceV,
                "public table of one cell",
                reporter);
    }

    /**
     * Positive electrode against lithium; the negative one, graphite, is taken to be at 0.1 V on its plateau
     * (recalled).
     */
    @Test
    void plateauOfThePositiveElectrode(TestReporter reporter) {
        double lithiated = 0.5;
        double positiveV = 3.4323
                - 0.8428 * Math.exp(-80.2493 * Math.pow(1 - lithiated, 1.3198))
                - 3.2474e-6 * Math.exp(20.2645 * Math.pow(1 - lithiated, 3.8003))
                + 3.2482e-6 * Math.exp(20.2646 * Math.pow(1 - lithiated, 3.7995));
        new Published(
                        TOPIC,
                        "four cells at rest, half charged, graphite at 0.1 V",
                        "V",
                        CELLS * (positiveV - 0.1),
                        0.15,
                        Obtained.DERIVED,
                        "Safari and Delacourt, J. Electrochem. Soc. 158 (2011) A562")
                .check(pack().at(25).restVoltageV(0.5), reporter);
    }

    /** Sources differ by more than the model from any of them: 80 to 90 % at 0 °C, 44 to 70 % near −20 °C. */
    @ParameterizedTest
    @CsvSource({
        "0, 90, 3, a maker's public note on cold",
        "-18, 70, 3, a maker's public note on cold",
        "0, 80, 11, a maker's public manual (12 V pack; at least)",
        "-20, 70, 4, a maker's public manual (12 V pack; at least)",
        "0, 80.2, 11, public comparison of a 10 Ah cell",
        "-10, 66.4, 15, public comparison of a 10 Ah cell",
        "-20, 55, 12, public comparison of a 20 Ah cell at 0.3C",
        "55, 95, 6, a maker's public manual (12 V pack; at least)"
    })
    void capacityByTemperature(
            double temperatureC, double percent, double tolerance, String source, TestReporter reporter) {
        double atTemperatureAh = deliveredAh(temperatureC, 5);
        new Published(
                        TOPIC,
                        "charge to 10 V in about 20 h at " + temperatureC + " °C, of that at 25 °C",
                        "%",
                        percent,
                        tolerance,
                        Obtained.SEEN,
                        source)
                .check(100 * atTemperatureAh / deliveredAh(25, 5), reporter);
    }

    @Test
    void resistanceInTheCold(TestReporter reporter) {
        new Published(
                        TOPIC,
                        "resistance at −20 °C over that at 25 °C (printed as 150 to 200 % more)",
                        "1",
                        2.75,
                        0.25,
                        Obtained.SEEN,
                        "a maker's public note on resistance")
                .check(slopeOhm(-20) / slopeOhm(25), reporter);
    }

    @ParameterizedTest
    @CsvSource({"5", "2", "1"})
    void peukertExponent(double lifeH, TestReporter reporter) {
        Battery stiff = Battery.asNew(LfpFit.of(LfpLabel.ofTwentyHours(100, 0.0005)));
        double currentA = 100 / lifeH;
        double slowH = new DischargeCurve(stiff, 25, 5).timeToH(LfpFit.END_V);
        double fastH = new DischargeCurve(stiff, 25, currentA).timeToH(LfpFit.END_V);
        new Published(
                        TOPIC,
                        "Peukert exponent between 5 A and " + currentA + " A of a 100 Ah pack of 0.5 mΩ",
                        "1",
                        1.05,
                        0.005,
                        Obtained.SEEN,
                        "a utility trade's public note on Peukert's law")
                .check(PeukertLaw.exponentFrom(5, slowH, currentA, fastH), reporter);
    }

    private static void rest(
            String what, double percent, double voltageV, double toleranceV, String source, TestReporter reporter) {
        new Published(TOPIC, what, "V", voltageV, toleranceV, Obtained.SEEN, source)
                .check(pack().at(25).restVoltageV(percent / 100), reporter);
    }

    private static double deliveredAh(double temperatureC, double currentA) {
        return new DischargeCurve(pack(), temperatureC, currentA).deliveredAh(LfpFit.END_V);
    }

    private static double slopeOhm(double temperatureC) {
        Terminal terminal = pack().at(temperatureC);
        return -terminal.slopeVPerA(0.5, 50);
    }
}

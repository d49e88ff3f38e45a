package curbwatt.engine.battery.label;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cold does to a battery fitted to its label. */
class ColdPublishedTest {
    private static final String ARMY = "US Army TM 5-4210-230-14&P-1";

    private static Battery battery(Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA) {
        return Battery.asNew(LabelFit.of(BatteryLabel.of(chemistry, c20Ah, reserveMin, coldCrankingA))
                .parameters());
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    /**
     * Cranking ability is taken as the current that leaves 7.2 V after 30 s; the manual does not define it. The
     * Arrhenius law
     * follows the table to −18 °C and is too hopeful below: at −29 °C by up to 15 points.
     */
    @ParameterizedTest
    @CsvSource({
        "FLOODED, 70, 120, 650",
        "FLOODED, 74, 130, 680",
        "FLOODED, 105, 190, 800",
        "AGM, 92, 160, 850",
        "AGM, 70, 120, 760"
    })
    void crankingAbility(
            Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA, TestReporter reporter) {
        Battery battery = battery(chemistry, c20Ah, reserveMin, coldCrankingA);
        double warmA = LabelTestRun.crankingA(battery, celsius(80));
        for (double[] point : new double[][] {{32, 65, 3}, {0, 40, 5}, {-20, 20, 15}}) {
            new Published(
                            "Cranking ability",
                            chemistry + " " + c20Ah + " Ah/" + coldCrankingA + " A at " + point[0]
                                    + " °F, of that at 80 °F",
                            "%",
                            point[1],
                            point[2],
                            Obtained.SEEN,
                            ARMY + " table 3")
                    .check(100 * LabelTestRun.crankingA(battery, celsius(point[0])) / warmA, reporter);
        }
    }

    /**
     * Half the cold cranking current for 15 s. The published figure is the least that a worn battery may show; a new
     * one
     * must show more, by 0.3 to 1.7 V here.
     */
    @ParameterizedTest
    @CsvSource({"70, 9.6", "60, 9.5", "50, 9.4", "40, 9.3", "30, 9.1", "20, 8.9", "10, 8.7", "0, 8.5"})
    void loadTest(double fahrenheit, double leastV, TestReporter reporter) {
        Battery battery = battery(Chemistry.FLOODED, 74, 130, 680);
        double currentA = 340;
        double hours = 15.0 / 3600;
        double volts = new DischargeCurve(battery, celsius(fahrenheit), currentA).voltageV(hours);
        assertThat(volts).isGreaterThan(leastV);
        new Published(
                        "Load test",
                        "new 74 Ah/680 A battery at half its cranking current, 15 s, " + fahrenheit
                                + " °F; published is the least of a passing one",
                        "V",
                        leastV,
                        1.9,
                        Obtained.SEEN,
                        ARMY + " table 5")
                .check(volts, reporter);
    }

    /** US Army TM 9-6115-730-24: 550 A for 15 s must leave 9.6 V on a large AGM set battery; ours is a usual label. */
    @ParameterizedTest
    @CsvSource({"AGM, 92, 160, 850, 425"})
    void absorbedMatHoldsItsLoadTest(
            Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA, double currentA) {
        Battery battery = battery(chemistry, c20Ah, reserveMin, coldCrankingA);
        assertThat(new DischargeCurve(battery, 21, currentA).voltageV(15.0 / 3600))
                .isGreaterThan(9.6);
    }

    /**
     * Charge to 10.5 V against temperature, discharge of more than an hour. The model keeps the 0.6 %/K of slow
     * discharges;
     * the table's fall is near it, its rise above 25 °C is smaller than ours.
     */
    @ParameterizedTest
    @CsvSource({"0, -16", "5, -12", "10, -10", "15, -6", "20, -1", "30, 3", "35, 4", "40, 5"})
    void slowCapacity(double temperatureC, double changePercent, TestReporter reporter) {
        Battery battery = battery(Chemistry.AGM, 92, 160, 850);
        double atReference = new DischargeCurve(battery, 25, 9.2).deliveredAh(10.5);
        double ours = 100 * (new DischargeCurve(battery, temperatureC, 9.2).deliveredAh(10.5) / atReference - 1);
        new Published(
                        "Capacity by temperature",
                        "AGM, C20/10 to 10.5 V at " + temperatureC + " °C, change from 25 °C",
                        "%",
                        changePercent,
                        6,
                        Obtained.SEEN,
                        "an AGM maker's public table, discharge above 60 min")
                .check(ours, reporter);
    }

    /** IEEE 485 table 1 multiplies a battery's size for cold; it is a rule for sizing stationary batteries. */
    @ParameterizedTest
    @CsvSource({"40, 1.300", "50, 1.190", "60, 1.110", "68, 1.056", "77, 1.000"})
    void sizeFactor(double fahrenheit, double factor, TestReporter reporter) {
        Battery battery = battery(Chemistry.FLOODED, 70, 120, 650);
        double atReference = new DischargeCurve(battery, 25, 8.75).deliveredAh(10.5);
        new Published(
                        "Capacity by temperature",
                        "flooded, C20/8 to 10.5 V at " + fahrenheit + " °F, size factor",
                        "1",
                        factor,
                        0.16,
                        Obtained.SEEN,
                        "IEEE 485 table 1")
                .check(
                        atReference / new DischargeCurve(battery, celsius(fahrenheit), 8.75).deliveredAh(10.5),
                        reporter);
    }
}

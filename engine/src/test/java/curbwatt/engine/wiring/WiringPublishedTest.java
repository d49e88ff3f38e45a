package curbwatt.engine.wiring;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WiringPublishedTest {
    private static final String TOPIC = "Wire";
    private static final double FOOT_M = 0.3048;
    /** K = 12.9 is a stranded conductor's; ours is solid, and 2.3 % lower. */
    private static final double STRANDING = 0.03;

    @ParameterizedTest
    @CsvSource({
        "-3, 0.0490",
        "-2, 0.0618",
        "-1, 0.0780",
        "0, 0.0983",
        "1, 0.1240",
        "2, 0.1563",
        "4, 0.2485",
        "6, 0.3951",
        "8, 0.6282",
        "10, 0.9989",
        "12, 1.588",
        "14, 2.525",
        "16, 4.016",
        "18, 6.385",
        "20, 10.15"
    })
    void resistanceOfSolidWire(int gauge, double ohmPer1000Ft, TestReporter reporter) {
        double ours = WireMaterial.COPPER.resistivityOhmM(20) * 1000 * FOOT_M / (new WireGauge(gauge).areaMm2() * 1e-6);
        new Published(
                        TOPIC,
                        "solid copper, AWG " + gauge + ", 1000 ft at 20 °C",
                        "Ω",
                        ohmPer1000Ft,
                        0.001 * ohmPer1000Ft,
                        Obtained.RECALCULATED,
                        "university physics reference page (American wire gauge table)")
                .check(ours, reporter);
    }

    @ParameterizedTest
    @CsvSource({
        "10, 5, 20, 20, 0.6554",
        "10, 5, 20, 60, 0.7584",
        "4, 4, 100, 20, 0.6521",
        "4, 4, 100, 60, 0.7546",
        "0, 3, 200, 20, 0.3869",
        "0, 3, 200, 60, 0.4477"
    })
    void dropOutAndBack(
            int gauge, double lengthM, double currentA, double temperatureC, double dropV, TestReporter reporter) {
        new Published(
                        TOPIC,
                        "AWG " + gauge + ", " + lengthM + " m each way, " + currentA + " A at " + temperatureC + " °C",
                        "V",
                        dropV,
                        0.0001,
                        Obtained.DERIVED,
                        "ASTM B258 diameters, resistivity of 100 % IACS copper")
                .check(currentA * WireRun.ofGauge(new WireGauge(gauge), lengthM).loopOhm(temperatureC), reporter);
    }

    @ParameterizedTest
    @CsvSource({"6, 1000, 10, 9.83", "8, 1000, 10, 15.63", "12, 100, 8, 3.16", "14, 100, 8, 5.02"})
    void electriciansExamples(int gauge, double lengthFt, double currentA, double dropV, TestReporter reporter) {
        new Published(
                        TOPIC,
                        "AWG " + gauge + ", " + lengthFt + " ft each way, " + currentA + " A, copper at 75 °C",
                        "V",
                        dropV,
                        STRANDING * dropV,
                        Obtained.SEEN,
                        "electricians' voltage-drop examples with K = 12.9 Ω·cmil/ft")
                .check(
                        currentA
                                * WireRun.ofGauge(new WireGauge(gauge), lengthFt * FOOT_M)
                                        .loopOhm(75),
                        reporter);
    }
}

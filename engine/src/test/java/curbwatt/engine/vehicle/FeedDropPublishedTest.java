package curbwatt.engine.vehicle;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import curbwatt.engine.load.Loads;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.wiring.WireGauge;
import curbwatt.engine.wiring.WireRun;
import java.util.List;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drops in a feed, as a run of one load behind it shows them. */
class FeedDropPublishedTest {
    private static final double FOOT_M = 0.3048;

    @ParameterizedTest
    @CsvSource({
        "10, 5, 20, 20, 0.6554",
        "10, 5, 20, 60, 0.7584",
        "4, 4, 100, 20, 0.6521",
        "4, 4, 100, 60, 0.7546",
        "0, 3, 200, 20, 0.3869",
        "0, 3, 200, 60, 0.4477"
    })
    void goldenDrops(
            int gauge, double lengthM, double currentA, double temperatureC, double dropV, TestReporter reporter) {
        new Published(
                        "Wire",
                        "in a run: AWG " + gauge + ", " + lengthM + " m each way, " + currentA + " A at " + temperatureC
                                + " °C",
                        "V",
                        dropV,
                        0.0001,
                        Obtained.DERIVED,
                        "ASTM B258 diameters, resistivity of 100 % IACS copper")
                .check(dropV(WireRun.ofGauge(new WireGauge(gauge), lengthM).loopOhm(temperatureC), currentA), reporter);
    }

    /** K = 25.8 Ω·cmil/ft there and back is a stranded conductor's; ours is solid, 2.3 % lower. */
    @ParameterizedTest
    @CsvSource({"6, 1000, 10, 9.83", "12, 100, 8, 3.16", "14, 100, 8, 5.02"})
    void electriciansExamples(int gauge, double lengthFt, double currentA, double dropV, TestReporter reporter) {
        new Published(
                        "Wire",
                        "in a run: AWG " + gauge + ", " + lengthFt + " ft each way, " + currentA
                                + " A, copper at 75 °C",
                        "V",
                        dropV,
                        0.03 * dropV,
                        Obtained.SEEN,
                        "electricians' voltage-drop examples with K = 12.9 Ω·cmil/ft")
                .check(
                        dropV(
                                WireRun.ofGauge(new WireGauge(gauge), lengthFt * FOOT_M)
                                        .loopOhm(75),
                                currentA),
                        reporter);
    }

    private static double dropV(double feedOhm, double currentA) {
        Bench bench = Bench.usual().with(new Circuit("feed", feedOhm, List.of(Loads.current("load", currentA))));
        RunResult run = bench.run(bench.off("p", 10));
        return run.lowestV() - run.circuits().get(0).lowestV();
    }
}

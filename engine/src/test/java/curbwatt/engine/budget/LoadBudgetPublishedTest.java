package curbwatt.engine.budget;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mean currents of radios and the run times that follow, put together from duty loads as a scenario would. */
class LoadBudgetPublishedTest {
    private static final String TOPIC = "Load budget";

    @ParameterizedTest
    @CsvSource({
        "portable, 2.1, 0.24, 0.08, 0.10, 0.10, 0.298",
        "portable, 2.1, 0.24, 0.08, 0.05, 0.05, 0.189",
        "100 W class, 22, 2, 1, 0.10, 0.10, 3.20",
        "100 W class, 22, 2, 1, 0.05, 0.05, 2.10"
    })
    void radioMeans(
            String radio,
            double transmitA,
            double receiveA,
            double standbyA,
            double transmitFraction,
            double receiveFraction,
            double meanA,
            TestReporter reporter) {
        new Published(
                        TOPIC,
                        "%s radio, %.0f %% transmit, %.0f %% receive, the rest standby, mean"
                                .formatted(radio, 100 * transmitFraction, 100 * receiveFraction),
                        "A",
                        meanA,
                        0.0005,
                        Obtained.DERIVED,
                        "currents from a maker's public manual and a public amateur-radio page; duties of an NIJ test "
                                + "and of the trade")
                .check(meanA(transmitA, receiveA, standbyA, transmitFraction, receiveFraction), reporter);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 37.5", "0, 0.1, 30", "0.016666666666666666, 0.1, 20.6"})
    void radioRunTime(double transmitFraction, double receiveFraction, double runTimeH, TestReporter reporter) {
        new Published(
                        TOPIC,
                        "1500 mAh, 40 mA standby, %.0f %% at 140 mA, %.1f min/h at 1.4 A"
                                .formatted(100 * receiveFraction, 60 * transmitFraction),
                        "h",
                        runTimeH,
                        0.05,
                        Obtained.RECALCULATED,
                        "a public worked example of a portable radio's run time")
                .check(1.5 / meanA(1.4, 0.14, 0.04, transmitFraction, receiveFraction), reporter);
    }

    @ParameterizedTest
    @CsvSource({"22, 2, 0.5, 12"})
    void halfTransmitHalfReceive(
            double transmitA, double receiveA, double transmitFraction, double meanA, TestReporter reporter) {
        new Published(
                        TOPIC,
                        "100 W class radio, half transmit, half receive, mean",
                        "A",
                        meanA,
                        1e-9,
                        Obtained.RECALCULATED,
                        "a public amateur-radio page on field operation")
                .check(meanA(transmitA, receiveA, receiveA, transmitFraction, 0), reporter);
    }

    /** Standby always, and what receiving and transmitting take above it for their share of a minute. */
    private static double meanA(
            double transmitA, double receiveA, double standbyA, double transmitFraction, double receiveFraction) {
        List<Load> parts = new ArrayList<>();
        parts.add(Loads.current("standby", standbyA));
        if (receiveFraction > 0) {
            parts.add(above("receive", receiveA - standbyA, receiveFraction));
        }
        if (transmitFraction > 0) {
            parts.add(above("transmit", transmitA - standbyA, transmitFraction));
        }
        Bench bench = Bench.usual().with(new Circuit("radio", 0, parts));
        return LoadBudget.of(bench.vehicle(), bench.off("any", 60)).meanA();
    }

    private static Load above(String name, double currentA, double fraction) {
        return Loads.patterned(name, currentA, new LoadPattern.Duty(3600 * fraction, 3600, 0, 0));
    }
}

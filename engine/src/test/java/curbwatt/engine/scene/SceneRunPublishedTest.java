package curbwatt.engine.scene;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.PeukertLaw;
import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.event.Story;
import curbwatt.engine.load.Loads;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The label's tests and other published figures as whole scenes, stepped, with a cutoff that ends the discharge. */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SceneRunPublishedTest {
    private static final String TOPIC = "Scene runs";
    private static final double EXACT = 0.001;

    @ParameterizedTest
    @CsvSource({
        "FLOODED, 70, 120, 650, PRACTICE, a usual label",
        "FLOODED, 74, 130, 680, SEEN, a label in a public repository",
        "FLOODED, 95.5, 160, 750, SEEN, a truck maker's public manual (C20 by a rule from the reserve)",
        "AGM, 92, 160, 850, PRACTICE, a usual label"
    })
    void reserveAndTwentyHourTests(
            Chemistry chemistry,
            double c20Ah,
            double reserveMin,
            double coldCrankingA,
            Obtained obtained,
            String source,
            TestReporter reporter) {
        Battery battery = Bench.battery(chemistry, c20Ah, reserveMin, coldCrankingA);
        String name = chemistry + " " + c20Ah + " Ah/" + reserveMin + " min/" + coldCrankingA + " A: ";
        new Published(
                        TOPIC,
                        name + "25 A at 27 °C to 10.5 V",
                        "min",
                        reserveMin,
                        EXACT * reserveMin,
                        obtained,
                        "SAE J537 test, figure of " + source)
                .check(timeToS(battery, 25, 27) / 60, reporter);
        new Published(
                        TOPIC,
                        name + "C20/20 at 25 °C to 10.5 V",
                        "h",
                        20,
                        EXACT * 20,
                        obtained,
                        "SAE J3012 test, figure of " + source)
                .check(timeToS(battery, c20Ah / 20, 25) / 3600, reporter);
    }

    /** To 10.5 V, with the exponent that reserve and 20 h tests imply; voltage, not charge, ends the discharge. */
    @ParameterizedTest
    @CsvSource({"5", "10", "15", "20", "35", "50"})
    void peukertsLawFromTheLabelsTwoTests(double currentA, TestReporter reporter) {
        double exponent = PeukertLaw.exponentFrom(3.7, 20, 25, 130 / 60.0);
        double lifeH = new PeukertLaw(74, 20, exponent).lifeH(currentA);
        new Published(
                        TOPIC,
                        "FLOODED 74 Ah/130 min: life at " + currentA + " A to 10.5 V",
                        "h",
                        lifeH,
                        0.05 * lifeH,
                        Obtained.DERIVED,
                        "Peukert's law through the label's 20 h and reserve tests, label in a public repository")
                .check(timeToS(Bench.battery(Chemistry.FLOODED, 74, 130, 680), currentA, 25) / 3600, reporter);
    }

    private static double timeToS(Battery battery, double currentA, double temperatureC) {
        Bench bench = Bench.of(battery)
                .from(1, temperatureC)
                .with(new Circuit("test", 0, List.of(Loads.current("load", currentA))))
                .with(Cutoffs.byHand("end", 10.5, 0, "test"));
        Story story = new Story(bench.run(bench.off("discharge", 30 * 3600)).events());
        return story.only(EventKind.CUTOFF_TRIPPED).timeS();
    }

    /** 60 A of load, an alternator that comes up to 60 A in 6 s: the battery gives the triangle. */
    @Test
    void alternatorRamp(TestReporter reporter) {
        Bench bench = Bench.usual()
                .with(Bench.alternator(60, 14.2, 6))
                .with(new Circuit("c", 0, List.of(Loads.current("step", 60, "on"))));
        RunResult run = bench.run(bench.off("wait", 10), bench.idling("step", 60, "on"));
        new Published(
                        TOPIC,
                        "charge from the battery while 10 A/s of alternator meet a step of 60 A",
                        "Ah",
                        0.05,
                        1e-4,
                        Obtained.DERIVED,
                        "a car maker's public manual: output rises by about 10 A/s below 1000 /min")
                // the ramp begins when the starter lets go
                .check(
                        run.charge().deliveredAh() - run.charge().starterAh() - 60 * Bench.STARTER.durationS() / 3600,
                        reporter);
    }

    /** The rule allows half of the reserve's charge in ten minutes: 1.25 A for each minute of reserve. */
    @ParameterizedTest
    @CsvSource({"100, 125", "130, 162.5", "160, 200", "200, 250"})
    void halfTheReserveInTenMinutes(double reserveMin, double limitA, TestReporter reporter) {
        Bench bench = Bench.of(Bench.battery(Chemistry.FLOODED, 0.6 * reserveMin, reserveMin, 700))
                .with(new Circuit("c", 0, List.of(Loads.current("minimum continuous load", limitA))));
        RunResult run = bench.run(bench.off("ten minutes", 600));
        new Published(
                        TOPIC,
                        limitA + " A for 10 min of a reserve of " + reserveMin + " min, share of the reserve's charge",
                        "1",
                        0.5,
                        1e-9,
                        Obtained.DERIVED,
                        "reserve-capacity rule of NFPA 1901 as quoted in a public purchase specification")
                .check(run.charge().deliveredAh() / (25 * reserveMin / 60), reporter);
        assertThat(run.crankChecks().get(0).marginV()).isPositive();
    }

    /** An alarm set to 11.8 V and 120 s must sound within 140 s of the battery's reaching 11.70 V. */
    @ParameterizedTest
    @CsvSource({"20", "40", "80"})
    void alarmComesInTime(double currentA) {
        Bench bench = Bench.usual()
                .with(new Circuit("a", 0, List.of(Loads.current("load", currentA))))
                .with(new Circuit("b", 0, List.of(Loads.current("nothing", 0))))
                .with(Cutoffs.byHand("mark", 11.7, 0, "b"))
                .with(Cutoffs.byHand("alarm", 11.8, 120, "a"));
        Story story = new Story(bench.run(bench.off("test", 5 * 3600)).events());
        double alarmS = story.of(EventKind.CUTOFF_TRIPPED).stream()
                .filter(event -> event.subject().equals("alarm"))
                .findFirst()
                .orElseThrow()
                .timeS();
        double markS = story.of(EventKind.CUTOFF_TRIPPED).stream()
                .filter(event -> event.subject().equals("mark"))
                .mapToDouble(event -> event.timeS())
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        assertThat(alarmS).isLessThan(markS + 140);
    }
}

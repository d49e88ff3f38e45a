package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.battery.label.DischargeCurve;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.event.Story;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class EngineStartTest {
    private static final Alternator HUNDRED = Bench.alternator(100, 14.2, 0);
    private final Bench lit = Bench.usual().with(new Circuit("c", 0, List.of(Loads.current("lamp", 20, "lit"))));

    @Test
    void theFirstPhaseNeedsNoStart() {
        Bench bench = lit.with(HUNDRED);
        Story story = new Story(bench.run(bench.idling("idle", 60)).events());
        assertThat(story.of(EventKind.ENGINE_STARTED)).isEmpty();
    }

    @Test
    void aFullBatteryStartsAndAnEmptyOneDoesNot() {
        Bench full = lit.with(HUNDRED);
        Story started =
                new Story(full.run(full.off("wait", 60), full.idling("go", 60)).events());
        assertThat(started.only(EventKind.ENGINE_STARTED).timeS()).isEqualTo(60);
        Bench empty = lit.with(HUNDRED).from(0.05, -15);
        RunResult run = empty.run(empty.off("wait", 60), empty.idling("go", 60, "lit"));
        Story stuck = new Story(run.events());
        assertThat(stuck.of(EventKind.ENGINE_STARTED)).isEmpty();
        assertThat(stuck.only(EventKind.ENGINE_DID_NOT_START).subject()).isEqualTo("go");
        assertThat(run.phases().get(1).engineRan()).isFalse();
        assertThat(run.phases().get(1).meanAlternatorA()).isZero();
        assertThat(run.phases().get(1).alternatorCapacityA()).isEmpty();
    }

    @Test
    void stoppingIsAnEventAndARunningEngineRunsOnFromPhaseToPhase() {
        Bench bench = lit.with(HUNDRED);
        RunResult run = bench.run(
                bench.idling("a", 60),
                bench.idling("b", 60),
                bench.off("c", 60),
                bench.off("d", 60),
                bench.idling("e", 60));
        assertThat(new Story(run.events()).lines(EventKind.ENGINE_STARTED, EventKind.ENGINE_STOPPED))
                .containsExactly("ENGINE_STOPPED c", "ENGINE_STARTED e");
    }

    @Test
    void anEngineThatDidNotStartIsTriedAgainInTheNextRunningPhase() {
        Bench bench = lit.from(0.05, -15);
        Story story = new Story(bench.run(bench.off("wait", 10), bench.idling("first", 10), bench.idling("second", 10))
                .events());
        assertThat(story.lines(EventKind.ENGINE_DID_NOT_START, EventKind.ENGINE_STARTED))
                .containsExactly("ENGINE_DID_NOT_START first", "ENGINE_DID_NOT_START second");
    }

    /** The plateau drawn from a battery at rest is a discharge in closed form. */
    @Test
    void lowestVoltageIsThatOfTheClosedDischargeAtThePlateausEnd() {
        Bench bench = Bench.usual().with(starting(0, 0, 200, 3, false));
        RunResult run = bench.run(bench.off("wait", 10));
        CrankCheck check = run.crankChecks().get(0);
        double expectedV = new DischargeCurve(Bench.SEVENTY, 25, 200).voltageV(3 / 3600.0);
        assertThat(check.lowestV()).isCloseTo(expectedV, within(1e-9));
        assertThat(check.lowestLoadsOffV()).isEqualTo(check.lowestV());
        assertThat(check.minimumV()).isEqualTo(9.6);
    }

    @Test
    void theInrushCountsWhereItIsTheLowest() {
        Bench plain = Bench.usual().with(starting(0, 0, 150, 1, false));
        Bench inrush = Bench.usual().with(starting(600, 0.05, 150, 1, false));
        double plainV = plain.run(plain.off("wait", 10)).crankChecks().get(0).lowestV();
        double inrushV = inrush.run(inrush.off("wait", 10)).crankChecks().get(0).lowestV();
        double expectedV = new DischargeCurve(Bench.SEVENTY, 25, 600).voltageV(0.05 / 3600);
        assertThat(inrushV).isLessThan(plainV).isCloseTo(expectedV, within(1e-9));
    }

    /** Two heads that never flash together count as lit together: the worst that a start can meet. */
    @Test
    void loadsThatStayOnCountAllAtOnce() {
        LoadPattern left = Loads.flashing("k", 500, 0, 0, 250);
        LoadPattern right = Loads.flashing("k", 500, 250, 0, 250);
        Bench bench = Bench.usual()
                .with(new Circuit(
                        "c",
                        0,
                        List.of(Loads.patterned("left", 30, left, "lit"), Loads.patterned("right", 30, right, "lit"))))
                .with(starting(0, 0, 200, 1, true));
        CrankCheck check = bench.run(bench.off("wait", 10, "lit")).crankChecks().get(0);
        Bench both = Bench.usual()
                .with(new Circuit("c", 0, List.of(Loads.patterned("mean", 30, left, "lit"))))
                .with(new Circuit("d", 0, List.of(Loads.patterned("other", 30, right, "lit"))))
                .with(starting(0, 0, 260, 1, false));
        double togetherV =
                both.run(both.off("wait", 10, "lit")).crankChecks().get(0).lowestV();
        assertThat(check.lowestV()).isCloseTo(togetherV, within(1e-9));
        assertThat(check.lowestLoadsOffV()).isGreaterThan(check.lowestV() + 0.05);
    }

    @Test
    void checksAreAskedAtTheEndOfEachPhaseWithTheEngineOffAndAtTheEnd() {
        Bench bench = lit.with(HUNDRED);
        RunResult run = bench.run(bench.idling("a", 60), bench.off("b", 60), bench.off("c", 60), bench.idling("d", 60));
        assertThat(run.crankChecks().stream().map(check -> check.phase() + " " + check.timeS()))
                .containsExactly("b 120.0", "c 180.0", "d 240.0");
    }

    /** The margin passes through zero on its way; asked at that very time the answer is zero. */
    @Test
    void restartTimeIsWhereTheMarginPassesThroughZero() {
        Bench bench = lit.with(
                new StartingSystem(new Starter(0, 0, 200, 1, 1), new CrankingLimit(OptionalDouble.of(11.0)), false));
        RunResult run = bench.run(bench.off("wait", 4 * 3600, "lit"));
        Event lost = new Story(run.events()).only(EventKind.RESTART_MARGIN_LOST);
        assertThat(run.restartTimeS()).hasValue(lost.timeS());
        RunResult until = bench.run(bench.off("wait", lost.timeS(), "lit"));
        assertThat(until.crankChecks().get(0).marginV()).isCloseTo(0, within(1e-5));
    }

    /** Also where it happens in the last seconds of a phase, between two askings; flashing keeps the steps short. */
    @Test
    void restartTimeIsFoundUpToThePhasesEnd() {
        Bench flashing = lit.with(
                new Circuit("d", 0, List.of(Loads.patterned("flash", 4, Loads.flashing("k", 500, 0, 0, 250), "lit"))));
        Bench bench = flashing.with(
                new StartingSystem(new Starter(0, 0, 200, 1, 1), new CrankingLimit(OptionalDouble.of(11.0)), false));
        double lostS =
                bench.run(bench.off("wait", 4 * 3600, "lit")).restartTimeS().orElseThrow();
        RunResult cut = bench.run(bench.off("wait", lostS + 0.5, "lit"), bench.off("more", 100, "lit"));
        assertThat(cut.restartTimeS().orElseThrow()).isCloseTo(lostS, within(0.1));
        RunResult ends = bench.run(bench.off("wait", lostS + 0.5, "lit"));
        assertThat(ends.restartTimeS().orElseThrow()).isCloseTo(lostS, within(0.1));
    }

    @Test
    void chargingRegainsTheMarginOnlyAfterTheEngineStopped() {
        Bench bench = lit.with(HUNDRED);
        RunResult run = bench.run(bench.off("a", 60), bench.idling("b", 60), bench.off("c", 60));
        assertThat(new Story(run.events()).of(EventKind.RESTART_MARGIN_LOST)).isEmpty();
        assertThat(run.restartTimeS()).isEmpty();
    }

    @Test
    void theOutputRampsUpAfterAStartAndNotAtTheScenesBeginning() {
        Bench bench = lit.with(Bench.alternator(100, 14.2, 10));
        RunResult warm = bench.run(bench.idling("a", 10, "lit"));
        assertThat(warm.phases().get(0).meanBatteryA()).isLessThanOrEqualTo(0);
        double cranksS = Bench.STARTER.durationS();
        RunResult started = bench.run(bench.off("wait", 60), bench.idling("a", cranksS + 2, "lit"));
        // output reaches the 20 A of the load 2 s after the starter has let go: the battery gives half of them on the
        // way
        double givenAs = 3600 * started.charge().starterAh() + 20 * cranksS + 10 * 2;
        assertThat(started.phases().get(1).meanBatteryA()).isCloseTo(givenAs / (cranksS + 2), within(1e-2));
    }

    /** A corner of the speed profile whose time does not fit the floating-point grid of the scene's clock. */
    @ParameterizedTest
    @CsvSource({"1000, 0.3", "1000.7, 0.1", "86400.3, 7.7", "2e6, 0.123456789"})
    void cornersOfTheSpeedProfileArePassed(double beforeS, double cornerS) {
        Bench bench = lit.with(HUNDRED);
        Phase driving = new Phase(
                "drive",
                EngineMode.DRIVING,
                60,
                25,
                new EngineSpeed(List.of(new EngineSpeed.Point(0, 600), new EngineSpeed.Point(cornerS, 1500))),
                Set.of("lit"));
        RunResult run = bench.run(bench.idling("before", beforeS), driving);
        assertThat(run.durationS()).isCloseTo(beforeS + 60, within(1e-6));
        assertThat(run.phases().get(1).meanLoadA()).isCloseTo(20, within(1e-6));
    }

    @Test
    void theFirstEventTellsTheRestVoltage() {
        Event first = lit.run(lit.off("a", 1)).events().get(0);
        assertThat(first.voltageV()).isCloseTo(12.65, within(1e-9));
    }

    private static StartingSystem starting(
            double inrushA, double inrushS, double crankingA, double crankingS, boolean loadsStayOn) {
        return new StartingSystem(
                new Starter(inrushA, inrushS, crankingA, crankingS, 1), CrankingLimit.published(), loadsStayOn);
    }
}

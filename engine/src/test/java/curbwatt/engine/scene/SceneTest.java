package curbwatt.engine.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.MeasuredOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.event.Story;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SceneTest {
    @Test
    void phasesFollowOneAnother() {
        Bench bench = Bench.usual();
        Scene scene = bench.scene(bench.off("a", 10), bench.off("b", 20), bench.off("c", 30));
        assertThat(scene.durationS()).isEqualTo(60);
        assertThat(scene.startS(0)).isZero();
        assertThat(scene.startS(2)).isEqualTo(30);
    }

    @Test
    void impossibleScenesAreRefused() {
        Bench bench = Bench.usual();
        assertThatIllegalArgumentException().isThrownBy(bench::scene).withMessageContaining("phases is empty");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bench.scene(bench.off("a", 10), bench.off("a", 10)))
                .withMessageContaining("two of the name 'a'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bench.off("a", 0.5))
                .withMessageContaining("durationS is 0.5 s, allowed is 1.0 to");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bench.from(0.01, 25))
                .withMessageContaining("stateOfChargeFraction is 0.01");
    }

    @Test
    void stagesSwitchLoadsAndStandbyFlowsWhileTheyAreOff() {
        Bench bench = Bench.usual()
                .with(new Circuit(
                        "c",
                        0,
                        List.of(
                                Loads.withStandby(Loads.current("radio", 4, "talk"), 0.5),
                                Loads.current("lamp", 6, "talk", "night"),
                                Loads.current("clock", 0.1))));
        RunResult run = bench.run(bench.off("dark", 60), bench.off("night", 60, "night"), bench.off("all", 60, "talk"));
        assertThat(run.phases().get(0).meanLoadA()).isCloseTo(0.6, within(1e-9));
        assertThat(run.phases().get(1).meanLoadA()).isCloseTo(6.6, within(1e-9));
        assertThat(run.phases().get(2).meanLoadA()).isCloseTo(10.1, within(1e-9));
    }

    @Test
    void dutyTakesItsShareAndItsRestBetween() {
        Bench bench = Bench.usual()
                .with(new Circuit("c", 0, List.of(Loads.patterned("siren", 20, new LoadPattern.Duty(6, 60, 30, 1)))));
        RunResult run = bench.run(bench.off("p", 1200));
        assertThat(run.phases().get(0).meanLoadA()).isCloseTo(0.1 * 20 + 0.9 * 1, within(1e-9));
        assertThat(run.circuits().get(0).peakA()).isEqualTo(20);
    }

    @Test
    void withoutCircuitsNothingHappensButTime() {
        Bench bare = Bench.usual();
        RunResult run = bare.run(bare.off("a", 86400));
        assertThat(run.endChargeFraction()).isEqualTo(1);
        assertThat(run.charge().loadsAh()).isZero();
        RunResult empty = bare.with(new Circuit("c", 0.1, List.of())).run(bare.off("a", 3600));
        assertThat(empty.circuits().get(0).chargeAh()).isZero();
        assertThat(empty.circuits().get(0).lowestV()).isEqualTo(empty.lowestV());
    }

    @Test
    void withoutAlternatorARunningEngineChargesNothing() {
        Bench bench = Bench.usual().with(new Circuit("c", 0, List.of(Loads.current("lamp", 5))));
        RunResult run = bench.run(bench.idling("a", 3600));
        assertThat(run.charge().alternatorAh()).isZero();
        assertThat(run.charge().deliveredAh()).isCloseTo(5, within(1e-9));
        assertThat(run.phases().get(0).alternatorCapacityA()).isEmpty();
    }

    @Test
    void anAlternatorBiggerThanEverythingHoldsItsSetPoint() {
        Bench bench = Bench.usual()
                .from(0.2, 25)
                .with(Bench.alternator(1000, 14.2, 0))
                .with(new Circuit("c", 0, List.of(Loads.power("lamp", 300))));
        RunResult run = bench.run(bench.idling("a", 4 * 3600));
        assertThat(run.phases().get(0).lowestV()).isCloseTo(14.2, within(1e-9));
        assertThat(run.phases().get(0).highestV()).isCloseTo(14.2, within(1e-9));
        assertThat(run.endChargeFraction()).isBetween(0.8, 1.0);
        assertThat(run.charge().nodeRemainderAh())
                .isCloseTo(0, within(1e-9 * run.charge().alternatorAh()));
    }

    @Test
    void anAlternatorTooSmallGivesAllItHasAndTheBatteryTheRest() {
        Bench bench = Bench.usual()
                .with(Bench.alternator(30, 14.2, 0))
                .with(new Circuit("c", 0, List.of(Loads.current("lamp", 50))));
        RunResult run = bench.run(bench.idling("a", 1800));
        assertThat(run.phases().get(0).meanAlternatorA()).isCloseTo(30, within(1e-9));
        assertThat(run.phases().get(0).meanBatteryA()).isCloseTo(20, within(1e-9));
    }

    /** Four days on the set-point: the battery stays full, never over, and gassing is all that it takes. */
    @Test
    void daysOnTheSetPointOverchargeNothing() {
        Bench bench = Bench.usual()
                .from(0.95, 25)
                .with(Bench.alternator(100, 14.2, 0))
                .with(new Circuit("c", 0, List.of(Loads.patterned("lamp", 10, new LoadPattern.Duty(300, 600, 0, 0)))));
        RunResult run = bench.run(bench.idling("a", 4 * 86400));
        assertThat(run.endChargeFraction()).isBetween(0.999, 1.0);
        assertThat(run.phases().get(0).highestV()).isCloseTo(14.2, within(1e-9));
        assertThat(run.charge().batteryRemainderAh())
                .isCloseTo(0, within(1e-9 * run.charge().alternatorAh()));
        assertThat(-run.charge().deliveredAh())
                .isCloseTo(run.charge().gassedAh() - run.charge().removedAh(), within(1e-6));
        assertThat(run.steps()).isLessThan(100_000);
    }

    @Test
    void aThousandPhasesOfASecondAddUpLikeOne() {
        Bench bench = Bench.usual()
                .with(new Circuit("c", 0, List.of(Loads.patterned("beacon", 10, Loads.flashing("k", 700, 0, 0, 300)))));
        List<Phase> phases = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            phases.add(bench.off("p" + i, 1));
        }
        RunResult pieces = bench.run(phases.toArray(Phase[]::new));
        RunResult whole = bench.run(bench.off("p", 1000));
        assertThat(pieces.charge().loadsAh()).isCloseTo(whole.charge().loadsAh(), within(1e-9));
        assertThat(pieces.endChargeFraction()).isCloseTo(whole.endChargeFraction(), within(1e-9));
        assertThat(pieces.lowestV()).isCloseTo(whole.lowestV(), within(1e-4));
    }

    @Test
    void withoutDelaysACutoffOpensAndClosesAgainAndTheRunEnds() {
        Bench bench = Bench.usual()
                .from(0.5, 25)
                .with(new Circuit("c", 0, List.of(Loads.current("lamp", 30))))
                .with(Cutoffs.of("guard", 0, 12, 0, new RecloseRule.AboveVoltage(12.05, 0), "c"));
        Story story = new Story(bench.run(bench.off("a", 5)).events());
        assertThat(story.of(EventKind.CUTOFF_TRIPPED)).hasSizeBetween(5, 52);
    }

    /** A large constant power in the first step, from rest, is found as it is when the run is under way. */
    @ParameterizedTest
    @CsvSource({"20, 600, 0.002", "20, 2000, 0", "35, 1500, 0.005", "70, 2500, 0", "70, 2500, 0.005", "70, 4000, 0.002"
    })
    void aLargeConstantPowerIsNoCollapseInTheFirstStep(double c20Ah, double powerW, double feedOhm) {
        Bench bench = Bench.of(Bench.battery(Chemistry.FLOODED, c20Ah, 1.7 * c20Ah, 9 * c20Ah))
                .with(new Circuit("c", feedOhm, List.of(Loads.power("inverter", powerW, "on"))));
        RunResult atOnce = bench.run(bench.off("a", 1, "on"));
        RunResult later = bench.run(bench.off("rest", 1), bench.off("a", 1, "on"));
        assertThat(new Story(atOnce.events()).of(EventKind.VOLTAGE_COLLAPSED)).isEmpty();
        assertThat(atOnce.lowestV()).isCloseTo(later.lowestV(), within(1e-9));
    }

    @Test
    void aConstantPowerBeyondTheBatteryCollapses() {
        Bench bench =
                Bench.usual().with(new Circuit("c", 0, List.of(Loads.power("a", 10_000), Loads.power("b", 10_000))));
        Story story = new Story(bench.run(bench.off("a", 1)).events());
        assertThat(story.only(EventKind.VOLTAGE_COLLAPSED).subject()).isEqualTo("node");
    }

    @Test
    void theOutputFollowsTheSpeedProfile() {
        Bench bench = Bench.usual()
                .from(0.5, 25)
                .with(new Alternator(
                        new MeasuredOutputCurve(List.of(
                                new MeasuredOutputCurve.Point(1000, 0), new MeasuredOutputCurve.Point(3000, 20))),
                        new HotFactor(1, 1),
                        new VoltageRegulator(16, 0, 12, 16),
                        2,
                        0));
        Phase rise = new Phase(
                "rise",
                EngineMode.DRIVING,
                100,
                25,
                new EngineSpeed(List.of(new EngineSpeed.Point(0, 500), new EngineSpeed.Point(100, 1500))),
                Set.of());
        assertThat(bench.run(rise).phases().get(0).meanAlternatorA()).isCloseTo(10, within(1e-6));
    }
}

package curbwatt.engine.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.event.Story;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class JudgeTest {
    private static final Circuit STEADY = new Circuit("a", 0.01, List.of(Loads.current("steady", 20)));
    private final Bench bench = Bench.usual().with(STEADY);

    @Test
    void aCircuitIsHeldUntilItsCutoffTrips() {
        Bench guarded = bench.with(Cutoffs.byHand("guard", 11.8, 30, "a"));
        Phase phase = guarded.off("p", 3 * 3600);
        RunResult run = guarded.run(phase);
        double tripS = new Story(run.events()).only(EventKind.CUTOFF_TRIPPED).timeS();
        Finding failed = finding(guarded, run, new Requirement.HoldCircuits(Set.of("a"), 3 * 3600), phase);
        assertThat(failed.met()).isFalse();
        assertThat(failed.cause()).isEqualTo("guard");
        assertThat(failed.figure()).isCloseTo(tripS / 60, within(1e-9));
        assertThat(failed.atS()).hasValue(tripS);
        assertThat(finding(guarded, run, new Requirement.HoldCircuits(Set.of("a"), tripS), phase)
                        .met())
                .isTrue();
        assertThat(finding(guarded, run, new Requirement.HoldCircuits(Set.of("a"), tripS + 1), phase)
                        .met())
                .isFalse();
    }

    @Test
    void aLoadThatDropsOutBeforeTheCutoffIsTheCause() {
        Load radio = Loads.dropping(Loads.current("radio", 1), new DropOut(12, 12.5, 5));
        Bench guarded =
                bench.with(new Circuit("b", 0, List.of(radio))).with(Cutoffs.byHand("guard", 11.5, 30, "a", "b"));
        Phase phase = guarded.off("p", 3 * 3600);
        RunResult run = guarded.run(phase);
        Finding finding = finding(guarded, run, new Requirement.HoldCircuits(Set.of("a", "b"), 3 * 3600), phase);
        assertThat(finding.cause()).isEqualTo("radio");
        assertThat(finding.figure() * 60)
                .isCloseTo(run.loads().get(1).firstDropOutS().orElseThrow(), within(1e-9));
    }

    @Test
    void chargeVoltageAndStartAreJudgedByTheirLowest() {
        Phase phase = bench.off("p", 3600);
        RunResult run = bench.run(phase);
        double charge = run.lowestChargeFraction();
        assertThat(finding(bench, run, new Requirement.KeepCharge(charge), phase)
                        .met())
                .isTrue();
        assertThat(finding(bench, run, new Requirement.KeepCharge(charge + 1e-9), phase)
                        .met())
                .isFalse();
        double lowestV = run.circuits().get(0).lowestV();
        assertThat(finding(bench, run, new Requirement.KeepVoltage("a", lowestV), phase)
                        .met())
                .isTrue();
        assertThat(finding(bench, run, new Requirement.KeepVoltage("a", lowestV + 1e-9), phase)
                        .met())
                .isFalse();
        double marginV = run.crankChecks().get(0).marginV();
        Finding start = finding(bench, run, new Requirement.WillStart(marginV), phase);
        assertThat(start.met()).isTrue();
        assertThat(start.cause()).isEqualTo("p");
        assertThat(finding(bench, run, new Requirement.WillStart(marginV + 1e-9), phase)
                        .met())
                .isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> finding(bench, run, new Requirement.KeepVoltage("z", 11), phase))
                .withMessageContaining("no circuit 'z'");
    }

    @Test
    void aTripCountsInThePhaseInWhichItFallsAlone() {
        Bench guarded = bench.with(Cutoffs.byHand("guard", 11.8, 30, "a"));
        double tripS = new Story(guarded.run(guarded.off("whole", 3 * 3600)).events())
                .only(EventKind.CUTOFF_TRIPPED)
                .timeS();
        Phase before = guarded.off("before", tripS - 60);
        Phase after = guarded.off("after", 3600);
        RunResult run = guarded.run(before, after);
        Finding calm = finding(guarded, run, new Requirement.NoTrip(Set.of("before")), before, after);
        assertThat(calm.met()).isTrue();
        assertThat(calm.figure()).isZero();
        assertThat(calm.cause()).isEmpty();
        assertThat(calm.atS()).isEmpty();
        Finding disturbed = finding(guarded, run, new Requirement.NoTrip(Set.of("before", "after")), before, after);
        assertThat(disturbed.met()).isFalse();
        assertThat(disturbed.figure()).isEqualTo(1);
        assertThat(disturbed.limit()).isZero();
        assertThat(disturbed.unit()).isEqualTo("trips");
        assertThat(disturbed.cause()).isEqualTo("guard");
        assertThat(disturbed.atS().orElseThrow()).isCloseTo(tripS, within(0.01));
    }

    @Test
    void aRunTimeLimitThatEndsBetweenTwoPhasesIsATripInTheLaterOne() {
        Bench limited = bench.with(Cutoffs.limited(Cutoffs.byHand("guard", 9, 30, "a"), 600));
        Phase first = limited.off("first", 600);
        Phase second = limited.off("second", 600);
        RunResult run = limited.run(first, second);
        assertThat(new Story(run.events())
                        .only(EventKind.RUN_TIME_LIMIT_REACHED)
                        .timeS())
                .isEqualTo(600);
        assertThat(finding(limited, run, new Requirement.NoTrip(Set.of("first")), first, second)
                        .met())
                .isTrue();
        assertThat(finding(limited, run, new Requirement.NoTrip(Set.of("second")), first, second)
                        .met())
                .isFalse();
    }

    /** What is asked after the night is left to the requirement on the night. */
    @Test
    void theStartAfterHoursParkedIsAskedApartFromThatInTheScene() {
        Bench full = bench.with(new Circuit("night", 0, List.of(Loads.current("heater", 6, "night"))));
        Phase watch = full.off("watch", 1200);
        Phase night = new Phase("night", EngineMode.PARKED, 5 * 3600, 25, EngineSpeed.constant(0), Set.of("night"));
        RunResult run = full.run(watch, night);
        double inScene = margin(run, "watch");
        double afterNight = margin(run, "night");
        assertThat(afterNight).isLessThan(inScene - 0.1);
        Requirement parked = new Requirement.StartAfterParked("night", 5 * 3600, afterNight);
        Requirement start = new Requirement.WillStart(inScene);
        Verdict verdict = new Judge(full.vehicle(), full.scene(watch, night), List.of(start, parked)).judge(run);
        assertThat(verdict.findings().stream().map(Finding::met)).containsExactly(true, true);
        assertThat(verdict.findings().stream().map(Finding::cause)).containsExactly("watch", "night");
        assertThat(finding(
                                full,
                                run,
                                new Requirement.StartAfterParked("night", 5 * 3600, afterNight + 1e-9),
                                watch,
                                night)
                        .met())
                .isFalse();
        assertThat(finding(full, run, start, watch, night).met())
                .as("with nothing asked of the night, the scene's own question goes to its end")
                .isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> finding(full, run, new Requirement.StartAfterParked("day", 60, 0.3), watch, night))
                .withMessageContaining("no phase 'day'");
    }

    private static double margin(RunResult run, String phase) {
        return run.crankChecks().stream()
                .filter(check -> check.phase().equals(phase))
                .mapToDouble(CrankCheck::marginV)
                .min()
                .orElseThrow();
    }

    @Test
    void withoutAnAuxiliaryBatteryItsChargeCannotBeJudged() {
        Phase phase = bench.off("p", 60);
        RunResult run = bench.run(phase);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> finding(bench, run, new Requirement.KeepAuxiliaryCharge(0.5), phase))
                .withMessageContaining("no auxiliary battery");
    }

    @Test
    void aVerdictIsMetWhenEveryFindingIs() {
        Phase phase = bench.off("p", 60);
        RunResult run = bench.run(phase);
        List<Requirement> both = List.of(new Requirement.KeepCharge(0.5), new Requirement.KeepCharge(1));
        Verdict verdict = new Judge(bench.vehicle(), bench.scene(phase), both).judge(run);
        assertThat(verdict.findings().stream().map(Finding::met)).containsExactly(true, false);
        assertThat(verdict.isMet()).isFalse();
    }

    @Test
    void doubtIsCastOnADeepDischargeInTheCold() {
        Bench cold = bench.from(0.4, -35);
        assertThat(doubts(cold, cold.off("p", 60)))
                .contains(
                        new Doubt(Doubt.Kind.ELECTROLYTE_MAY_FREEZE, "battery"),
                        new Doubt(Doubt.Kind.TEMPERATURE_OUT_OF_MODEL, "battery"),
                        new Doubt(Doubt.Kind.DEEP_DISCHARGE, "battery"));
        assertThat(doubts(bench, bench.off("p", 60))).isEmpty();
    }

    @Test
    void doubtIsCastOnAVoltageNearTheTripLevelAndOnChatter() {
        double lowestV = bench.run(bench.off("p", 600)).lowestV();
        Bench near = bench.with(Cutoffs.byHand("guard", lowestV - 0.05, 30, "a"));
        assertThat(doubts(near, near.off("p", 600))).containsExactly(new Doubt(Doubt.Kind.NEAR_TRIP, "guard"));
        Bench far = bench.with(Cutoffs.byHand("guard", lowestV - 0.15, 30, "a"));
        assertThat(doubts(far, far.off("p", 600))).isEmpty();
        Bench chattering =
                bench.from(0.6, 25).with(Cutoffs.of("guard", 0, 12.15, 5, new RecloseRule.AboveVoltage(12.2, 5), "a"));
        assertThat(doubts(chattering, chattering.off("p", 600)))
                .contains(new Doubt(Doubt.Kind.CUTOFF_CHATTERS, "guard"));
    }

    @Test
    void doubtIsCastOnAnAlternatorNearCutInAndOnACollapse() {
        Bench slow = bench.with(new Alternator(
                ReactanceOutputCurve.through(AlternatorLabel.of(50, 120)),
                HotFactor.published(),
                VoltageRegulator.usual(14.2),
                2,
                0));
        assertThat(doubts(slow, slow.idling("p", 60)))
                .containsExactly(new Doubt(Doubt.Kind.ALTERNATOR_NEAR_CUT_IN, "p"));
        Bench collapsing = bench.with(new Circuit("weak", 0.5, List.of(Loads.power("heater", 120))));
        assertThat(doubts(collapsing, collapsing.off("p", 60)))
                .containsExactly(new Doubt(Doubt.Kind.VOLTAGE_COLLAPSED, "weak"));
    }

    private static List<Doubt> doubts(Bench bench, Phase phase) {
        return new Judge(bench.vehicle(), bench.scene(phase), List.of())
                .judge(bench.run(phase))
                .doubts();
    }

    private static Finding finding(Bench bench, RunResult run, Requirement requirement, Phase... phases) {
        return new Judge(bench.vehicle(), bench.scene(phases), List.of(requirement))
                .judge(run)
                .findings()
                .get(0);
    }
}

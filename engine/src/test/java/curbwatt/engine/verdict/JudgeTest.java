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

    private static Finding finding(Bench bench, RunResult run, Requirement requirement, Phase phase) {
        return new Judge(bench.vehicle(), bench.scene(phase), List.of(requirement))
                .judge(run)
                .findings()
                .get(0);
    }
}

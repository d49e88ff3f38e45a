package curbwatt.engine.study.recharge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Roster;
import curbwatt.engine.study.AirShift;
import curbwatt.engine.study.HeldBackTruck;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RechargeStudyTest {

    private static final RechargePlan PLAN = RechargeTruck.plan(OptionalDouble.empty(), 7200);

    private static RechargeResult run(Question question, RechargePlan plan, int threads) {
        return new RechargeStudy(question, Optional.empty(), plan).run(new RunPool(threads), StudyWatch.none());
    }

    @Test
    void theSameAnswerOnAnyNumberOfThreads() {
        Question question = RechargeTruck.question(0.95, 8, 30, 100);
        assertThat(run(question, PLAN, 1)).isEqualTo(run(question, PLAN, 3));
    }

    @Test
    void theLastDriveIsLeftOutAndSaysWhatDrivingIsLike() {
        RechargeResult result = run(RechargeTruck.question(0.95, 8, 30, 100), PLAN, 2);
        assertThat(result.leftOutS()).isEqualTo(900);
        assertThat(result.stages()).containsExactly("engine");
        assertThat(result.driving().way()).isEqualTo(new Way(EngineMode.DRIVING, 2000));
        assertThat(result.missingAh()).isCloseTo(20, within(0.5));
        assertThat(result.idling()).extracting(back -> back.way().engineRpm()).containsExactly(600.0, 1500.0);
    }

    @Test
    void nearFullTheBatterySetsThePace() {
        RechargeResult result = run(RechargeTruck.question(1, 8, 150, 200), PLAN, 2);
        double allAtOnceS = result.missingAh() / (200 - 8) * 3600;
        assertThat(result.driving().backS().orElseThrow()).isGreaterThan(4 * allAtOnceS);
        assertThat(result.idling().get(0).isAsFastAs(result.driving())).isTrue();
        assertThat(result.groups()).hasSize(2);
    }

    @Test
    void anAlternatorThatDoesNotCarryTheLoadsNeverGivesItBack() {
        RechargeResult result = run(RechargeTruck.question(0.9, 25, 15, 22), PLAN, 2);
        assertThat(result.ways()).allSatisfy(back -> {
            assertThat(back.backS()).isEmpty();
            assertThat(back.limit()).contains(Limit.ALTERNATOR);
            assertThat(back.mostFraction()).isNegative();
        });
        assertThat(result.lowestEverRpm()).isEmpty();
    }

    @Test
    void chargeThatTheSetPointDoesNotReachIsTheBatterysLimit() {
        RechargeResult result = run(
                new Question(
                        RechargeTruck.question(0.95, 8, 60, 200)
                                .simulation()
                                .with(RechargeTruck.truck(8, 60, 200)
                                        .withAlternator(RechargeTruck.truck(8, 60, 200)
                                                .alternator()
                                                .map(strong -> new Alternator(
                                                        strong.output(),
                                                        strong.hotFactor(),
                                                        VoltageRegulator.usual(12.7),
                                                        strong.pulleyRatio(),
                                                        strong.rampS())))),
                        List.of()),
                PLAN,
                2);
        assertThat(result.driving().limit()).contains(Limit.ACCEPTANCE);
    }

    @Test
    void aBatteryThatDoesNotStartTheEngineIsNotCharged() {
        RechargeResult result = run(RechargeTruck.question(0.3, 8, 60, 200), PLAN, 2);
        assertThat(result.driving().limit()).contains(Limit.DOES_NOT_START);
        assertThat(result.lowestEverRpm()).isEmpty();
    }

    @Test
    void whatIsThereNeedNotBeGivenBack() {
        RechargeResult result =
                run(RechargeTruck.question(0.95, 8, 60, 200), RechargeTruck.plan(OptionalDouble.of(0.5), 7200), 2);
        assertThat(result.driving().isNothing()).isTrue();
        assertThat(result.driving().backS()).hasValue(0);
    }

    @Test
    void scenesADayKeepUpWithALongerDriveAlone() {
        RechargePlan plan = new RechargePlan(
                OptionalDouble.of(0.7),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(600.0),
                7200,
                Optional.of(new CallPattern(2, 600)));
        // 20 A for an hour twice a day against 12 A for ten minutes after each
        ShiftAnswer answer =
                run(RechargeTruck.question(0.95, 8, 20, 20), plan, 2).shifts().orElseThrow();
        assertThat(answer.keepsUp()).isFalse();
        double longerH = answer.longerDriveS().orElseThrow() / 3600;
        assertThat(answer.longer().orElseThrow().keepsUp(0.7)).isTrue();
        // what two scenes take, at 12 A: 40 Ah in three hours and 20 min, of which 20 min are driven anyway
        assertThat(longerH).isBetween(2.9, 3.5);
    }

    /** Sixty-one drives a day or more: a whole minute shared among them is less than a phase can last. */
    @Test
    void aDayOfManyShortDrivesIsSearchedToo() {
        List<Phase> day = new ArrayList<>();
        for (int call = 1; call <= 70; call++) {
            day.add(new Phase("call " + call, EngineMode.OFF, 180, 25, EngineSpeed.constant(0), Set.of("warn")));
            day.add(new Phase(
                    "drive " + call, EngineMode.DRIVING, 240, 25, EngineSpeed.constant(2000), Set.of("engine")));
        }
        Question question = RechargeTruck.question(0.9, 8, 20, 20);
        Roster roster = new Roster(
                "many calls",
                question.simulation().scene().start(),
                List.of(DayPlan.parkedToItsEnd("Day", day, "parked", AirTemperature.constant(25), Set.of())),
                14);
        ShiftAnswer answer = new RechargeStudy(
                        question, Optional.of(roster), RechargeTruck.plan(OptionalDouble.of(0.8), 7200))
                .run(new RunPool(2), StudyWatch.none())
                .shifts()
                .orElseThrow();
        // a day takes 20 A for 3 min and gives 12 A for 4 min, seventy times; 14 Ah and the starts are lacking
        assertThat(answer.keepsUp()).isFalse();
        double longerS = answer.longerDriveS().orElseThrow();
        assertThat(longerS % 60).isZero();
        assertThat(longerS).isBetween(14.0 / 12 * 3600, answer.mostLongerS());
        assertThat(answer.longer().orElseThrow().keepsUp(0.8)).isTrue();
    }

    @Test
    void aPackThatRefusesChargeInTheColdIsSaidToBeTheReason() {
        HeldBackTruck truck = HeldBackTruck.all().get(3);
        Question warm = truck.question(truck.at(11, 60));
        Question cold = warm.of(new AirShift(-30));
        RechargePlan plan = RechargeTruck.plan(OptionalDouble.empty(), 7200);
        assertThat(run(cold, plan, 2).ways())
                .allSatisfy(back -> assertThat(back.limit()).contains(Limit.PACK_REFUSES));
        assertThat(run(cold, plan, 2).groups()).hasSize(2);
        assertThat(run(warm, plan, 2).driving().limit()).isEmpty();
    }

    @Test
    void scenesThatDoNotFitIntoADayAreRefused() {
        RechargePlan plan = new RechargePlan(
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                7200,
                Optional.of(new CallPattern(20, 3600)));
        RechargeStudy study = new RechargeStudy(RechargeTruck.question(0.95, 8, 20, 20), Optional.empty(), plan);
        assertThatThrownBy(study::checkPattern)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("time left to park in");
    }

    @Test
    void theLeastStepIsFoundAndMissingWhenNoneDoes() {
        assertThat(LeastStep.least(1, 100, step -> step >= 37)).hasValue(37);
        assertThat(LeastStep.least(1, 100, step -> true)).hasValue(1);
        assertThat(LeastStep.least(1, 100, step -> step >= 100)).hasValue(100);
        assertThat(LeastStep.least(1, 100, step -> false)).isEmpty();
        assertThat(LeastStep.least(1, 0, step -> true)).isEmpty();
    }
}

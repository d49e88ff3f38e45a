package curbwatt.engine.study.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.battery.label.LabelTestRun;
import curbwatt.engine.days.SteadyLoads;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.CutoffSetting;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyTruck;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The size holds, its neighbour does not, and nothing of it depends on the number of threads. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SizeStudyTest {

    private static final SizePlan PLAN = new SizePlan(
            OptionalDouble.of(0.8), OptionalDouble.of(1.25), OptionalDouble.empty(), 0.8, 10, Spread.usual(), 1.1);

    private SizeStudy study;
    private SizeResult result;

    /** Steady loads, so that a run takes no time. */
    static Question steady() {
        Question question = StudyTruck.question();
        Simulation simulation = question.simulation();
        return new Question(simulation.with(SteadyLoads.of(simulation.vehicle())), question.requirements());
    }

    private static Candidate candidate(double c20Ah, double reserveMin, double coldCrankingA) {
        return new Candidate(
                c20Ah + " Ah",
                LabelFit.of(BatteryLabel.of(Chemistry.AGM, c20Ah, reserveMin, coldCrankingA))
                        .parameters());
    }

    @BeforeAll
    void run() {
        study = new SizeStudy(
                steady(), PLAN, List.of(candidate(92, 160, 850), candidate(180, 360, 1250), candidate(240, 500, 1600)));
        result = study.run(new RunPool(1), StudyWatch.none());
    }

    @Test
    void threeThreadsSayTheSame() {
        assertThat(study.run(new RunPool(3), StudyWatch.none())).isEqualTo(result);
    }

    @Test
    void theSizeHoldsAndThreePerCentLessDoesNot() {
        CapacitySearch search = new CapacitySearch(study.question().of(result.stated()), result.seat());
        double needAh = result.steps().stated().holdsAh().orElseThrow();

        assertThat(search.answer(needAh).isMet()).isTrue();
        assertThat(search.answer(0.97 * needAh).isMet()).isFalse();
        assertThat(result.steps().stated().failure()).isPresent();
    }

    /** Brute force: every size on a fine scale, from far below to far above. */
    @Test
    void aSweepOverAllSizesAgrees() {
        CapacitySearch search = new CapacitySearch(study.question().of(result.stated()), result.seat());
        double needAh = result.steps().stated().holdsAh().orElseThrow();
        double smallest = Double.NaN;
        for (double sizeAh = 200; sizeAh > 15; sizeAh *= 0.98) {
            if (!search.answer(sizeAh).isMet()) {
                break;
            }
            smallest = sizeAh;
        }

        assertThat(smallest).isCloseTo(needAh, within(0.03 * needAh));
    }

    @Test
    void enoughDrawsHoldAtTheSizeForTheOddsAndTooFewBelow() {
        double needAh = result.steps().atOdds().holdsAh().orElseThrow();

        assertThat(held(needAh)).isGreaterThanOrEqualTo(8);
        assertThat(held(0.97 * needAh)).isLessThan(8);
        assertThat(needAh).isGreaterThan(result.steps().stated().holdsAh().orElseThrow());
    }

    private long held(double sizeAh) {
        return Draws.of(result.stated(), PLAN).stream()
                .filter(draw -> new CapacitySearch(study.question().of(draw), result.seat())
                        .answer(sizeAh)
                        .isMet())
                .count();
    }

    @Test
    void theSmallestOfTheListThatHoldsIsChosen() {
        double needAh = result.steps().atOdds().holdsAh().orElseThrow();

        assertThat(result.outcomes())
                .extracting(outcome -> outcome.candidate().c20Ah())
                .containsExactly(92.0, 180.0, 240.0);
        assertThat(result.chosen()).hasValueSatisfying(chosen -> {
            assertThat(chosen.held().orElseThrow()).isGreaterThanOrEqualTo(8);
            assertThat(chosen.candidate().c20Ah()).isGreaterThan(0.9 * needAh);
        });
    }

    @Test
    void coldAndAgeAskForMore() {
        SizeResult.Steps steps = result.steps();

        assertThat(steps.asNewWarm().holdsAh().orElseThrow())
                .isLessThan(steps.asNew().holdsAh().orElseThrow());
        assertThat(steps.asNew().holdsAh().orElseThrow())
                .isLessThan(steps.stated().holdsAh().orElseThrow());
        assertThat(steps.drawNeedsAh()).isSorted();
    }

    @Test
    void aLargerBatteryHoldsLonger() {
        assertThat(result.curves())
                .hasSize(6)
                .allSatisfy(curve -> assertThat(curve.points())
                        .extracting(HoldCurve.Point::heldS)
                        .isSorted());
    }

    @Test
    void aTripLevelAboveTheFullBatteryIsHelpedByNoSize() {
        Question hasty = steady().of(CutoffSetting.trip("cutoff", 13.0, 5));

        SizeResult none = new SizeStudy(hasty, PLAN, List.of()).run(new RunPool(1), StudyWatch.none());

        assertThat(none.steps().stated().holdsAh()).isEmpty();
        assertThat(none.steps().atOdds().holdsAh()).isEmpty();
        assertThat(none.steps().stated().failure().orElseThrow().requirement())
                .isInstanceOf(Requirement.HoldCircuits.class);
        assertThat(none.paper().orElseThrow().atTripAh()).isEmpty();
    }

    @Test
    void theLabelTestsOfALargerBatteryGrowInProportion() {
        BatteryParameters one = candidate(92, 160, 850).parameters();
        Battery two = Battery.asNew(one.times(2));

        assertThat(LabelTestRun.twentyHoursAh(two, 184)).isCloseTo(184, within(0.01));
        assertThat(LabelTestRun.coldCrankingA(two)).isCloseTo(1700, within(0.1));
    }
}

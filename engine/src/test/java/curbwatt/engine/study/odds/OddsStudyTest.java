package curbwatt.engine.study.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyStoppedException;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.odds.Spread.Shape;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OddsStudyTest {

    private static final Spread FIXED_AT_ONE = new Spread(Shape.FIXED, 1, 1, 1, 1, "");
    private static final Spread FIXED_AT_ZERO = new Spread(Shape.FIXED, 0, 1, 0, 0, "");

    private static OddsPlan usual(int runs) {
        return OddsPlan.usual().drawing(runs, 5, Sampling.SOBOL, false);
    }

    /** One input varies, the others stand as the scenario says. */
    private static OddsPlan only(Input input, Spread spread, int runs, Sampling sampling) {
        Map<Input, Spread> spreads = new EnumMap<>(Input.class);
        for (Input other : Input.values()) {
            boolean difference = other == Input.TEMPERATURE || other == Input.SENSOR;
            spreads.put(other, difference ? FIXED_AT_ZERO : FIXED_AT_ONE);
        }
        spreads.put(input, spread);
        return new OddsPlan(runs, 3, sampling, false, spreads);
    }

    private static OddsResult run(Question question, OddsPlan plan, int threads) {
        return new OddsStudy(question, plan).run(new RunPool(threads), StudyWatch.none());
    }

    @Test
    void theSameDrawsOnOneThreadAndOnThree() {
        Question question = SteadyTruck.question();
        OddsPlan plan = usual(64).drawing(64, 5, Sampling.SOBOL, true);
        assertThat(run(question, plan, 3)).isEqualTo(run(question, plan, 1));
    }

    @Test
    void anotherSeedGivesOtherDrawsAndNearlyTheSameChance() {
        OddsResult one = run(SteadyTruck.question(), usual(128), 2);
        OddsResult two = run(SteadyTruck.question(), usual(128).drawing(128, 6, Sampling.SOBOL, false), 2);
        assertThat(two.draws()).isNotEqualTo(one.draws());
        assertThat(two.held().orElseThrow().fraction())
                .isEqualTo(one.held().orElseThrow().fraction(), within(0.15));
    }

    /**
     * A cutoff that opens 60 min after the engine has stopped, and a stay that lasts 30 to 90 min with equal chance: half of
     * the stays are held to their end.
     */
    @ParameterizedTest
    @EnumSource(Sampling.class)
    void halfOfTheStaysOutlastATimerSetToTheirMean(Sampling sampling) {
        Spread length = new Spread(Shape.UNIFORM, 1, 1, 0.5, 1.5, "");
        OddsResult result = run(SteadyTruck.withTimer(), only(Input.SCENE_LENGTH, length, 256, sampling), 2);

        Chance held = result.held().orElseThrow();
        assertThat(held.fraction()).isEqualTo(0.5, within(sampling == Sampling.SOBOL ? 0.01 : 0.08));
        assertThat(0.5).isBetween(held.lowFraction(), held.highFraction());
        assertThat(result.trips().hits())
                .as("a timer is no trip on low voltage")
                .isZero();
        assertThat(result.tripTimesS())
                .hasSize(256 - held.hits())
                .allSatisfy(timeS -> assertThat(timeS).isEqualTo(SteadyTruck.DRIVE_S + 3600, within(1e-3)));
        assertThat(result.importance().get(0).input()).isEqualTo(Input.SCENE_LENGTH);
    }

    /** Each draw, run by hand through the variations, comes to what the study says. */
    @Test
    void eachDrawIsTheRunThatItSays() {
        OddsResult result = run(SteadyTruck.question(), usual(64), 2);
        for (Draw draw : result.draws().subList(0, 8)) {
            Question question = SteadyTruck.question();
            for (int i = 0; i < result.inputs().size(); i++) {
                question = question.of(
                        result.inputs().get(i).variation(draw.values().get(i)));
            }
            assertThat(question.answer().firstTripS()).isEqualTo(draw.outcome().tripS());
            assertThat(question.answer().restartMarginV())
                    .isEqualTo(draw.outcome().restartMarginV(), within(1e-12));
        }
    }

    /** A battery with plenty left for the starter is cut off by a high trip level: that is a nuisance. */
    @Test
    void aHighTripLevelIsANuisanceAndALowOneGuards() {
        OddsPlan plan = only(Input.LOADS, new Spread(Shape.UNIFORM, 1, 1, 0.9, 1.1, ""), 64, Sampling.SOBOL);

        OddsResult high = run(SteadyTruck.nervous(), plan, 2);
        assertThat(high.trips().hits()).isEqualTo(64);
        assertThat(high.nuisance().hits()).isEqualTo(64);

        OddsResult guarding = run(SteadyTruck.guarding(), plan, 2);
        assertThat(guarding.trips().hits()).isEqualTo(64);
        assertThat(guarding.nuisance().hits())
                .as("without the cutoff it would not have started")
                .isZero();
    }

    /** A rig that collapses in the night lets the battery recover: a start in the morning does not make the trip a nuisance. */
    @Test
    void aTripBeforeACollapseIsNoNuisanceThoughTheBatteryRecovers() {
        Question night = SteadyTruck.night();
        RunResult unguarded = night.simulation()
                .with(night.simulation().vehicle().withCutoffs(List.of()))
                .run(Recorder.none());
        assertThat(unguarded.events()).extracting(Event::kind).contains(EventKind.VOLTAGE_COLLAPSED);
        assertThat(unguarded.crankChecks()).allMatch(check -> check.marginV() > 0);

        OddsPlan plan = only(Input.LOADS, new Spread(Shape.UNIFORM, 1, 1, 0.99, 1.01, ""), 64, Sampling.SOBOL);
        OddsResult result = run(night, plan, 2);
        assertThat(result.trips().hits()).isEqualTo(64);
        assertThat(result.nuisance().hits()).isZero();
    }

    @Test
    void theFanWidensAndItsQuantilesRise() {
        OddsResult result = run(SteadyTruck.question(), usual(64), 2);
        List<Fan.Stretch> stretches = result.fan().stretches();
        assertThat(stretches).hasSize(120).allSatisfy(stretch -> {
            assertThat(stretch.lowestV()).isSorted();
            assertThat(stretch.chargeFraction()).isSorted();
        });
        assertThat(stretches.get(0).running()).isEqualTo(64);
        assertThat(stretches.get(119).running()).isBetween(1, 20);
        Fan.Stretch middle = stretches.get(60);
        assertThat(middle.chargeFraction().get(4) - middle.chargeFraction().get(0))
                .isGreaterThan(0.02);
    }

    /** A steady load takes as much in each stretch, however many of them a step goes over. */
    @Test
    void theFanKnowsTheChargeWithinAStep() {
        List<Fan.Stretch> stretches =
                run(SteadyTruck.guarding(), usual(64), 2).fan().stretches();
        double whole = median(stretches.get(25)) - median(stretches.get(40));
        for (int i = 25; i < 40; i++) {
            assertThat(median(stretches.get(i)) - median(stretches.get(i + 1)))
                    .isCloseTo(whole / 15, within(whole / 60));
        }
    }

    private static double median(Fan.Stretch stretch) {
        return stretch.chargeFraction().get(Fan.PERCENTS.size() / 2);
    }

    @Test
    void aWatchCanStopIt() {
        StudyWatch stopping = new StudyWatch() {
            @Override
            public void done(int done, int all) {
                assertThat(all).isEqualTo(64);
            }

            @Override
            public boolean isStopped() {
                return true;
            }
        };
        assertThatThrownBy(() -> new OddsStudy(SteadyTruck.question(), usual(64)).run(new RunPool(2), stopping))
                .isInstanceOf(StudyStoppedException.class);
    }

    @Test
    void nothingThatVariesIsRefused() {
        OddsPlan none = only(Input.LOADS, FIXED_AT_ONE, 64, Sampling.SOBOL);
        assertThatThrownBy(() -> run(SteadyTruck.question(), none, 1)).hasMessageContaining("no input varies");
    }

    @Test
    void aSobolSequenceTakesAPowerOfTwo() {
        assertThatThrownBy(() -> usual(1000)).hasMessageContaining("512 or 1024");
        assertThat(OddsPlan.usual().drawing(1000, 1, Sampling.SEEDED, false).runs())
                .isEqualTo(1000);
        assertThatThrownBy(() -> usual(32)).hasMessageContaining("runs");
    }
}

package curbwatt.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.scene.Phase;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each variation changes what it says, and the answer moves the way physics has it. */
class VariationTest {

    private static final Question BASE = StudyTruck.question();
    private static final Answer ANSWER = BASE.answer();

    private static double tripS(Variation variation) {
        return BASE.of(variation).answer().firstTripS().orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void theBaseTripsBeforeTheWatchIsOver() {
        assertThat(ANSWER.firstTripS().orElseThrow()).isBetween(3 * 3600.0, 6 * 3600.0);
        assertThat(ANSWER.tripCount()).isEqualTo(1);
        assertThat(ANSWER.heldS().orElseThrow()).isEqualTo(ANSWER.firstTripS().orElseThrow(), within(1e-6));
        assertThat(ANSWER.isMet()).isEqualTo(ANSWER.firstFailure().isEmpty());
    }

    @Test
    void noneChangesNothing() {
        assertThat(BASE.of(Variation.none())).isEqualTo(BASE);
        assertThat(BASE.of(new LoadScale(1))).isEqualTo(BASE);
        assertThat(BASE.of(new BatteryHealth(1, 1))).isEqualTo(BASE);
        assertThat(BASE.of(new AirShift(0))).isEqualTo(BASE);
        assertThat(BASE.of(new SensorError(0))).isEqualTo(BASE);
        assertThat(BASE.of(new AlternatorHeat(1))).isEqualTo(BASE);
        assertThat(BASE.of(new SceneLength(1, phase -> true))).isEqualTo(BASE);
    }

    @Test
    void aLowerTripLevelAndALongerDelayTripLater() {
        double baseS = ANSWER.firstTripS().orElseThrow();

        assertThat(tripS(CutoffSetting.trip("cutoff", 11.7, 60))).isGreaterThan(baseS);
        assertThat(tripS(CutoffSetting.trip("cutoff", 12.1, 60))).isLessThan(baseS);
        assertThat(tripS(CutoffSetting.trip("cutoff", 11.9, 600))).isGreaterThan(baseS);
    }

    @Test
    void aSensorThatReadsLowActsLikeAHigherTripLevel() {
        assertThat(tripS(new SensorError(-0.1))).isEqualTo(tripS(CutoffSetting.trip("cutoff", 12.0, 60)), within(1e-3));
    }

    @Test
    void lessCapacityMoreLoadAndColdTripEarlier() {
        double baseS = ANSWER.firstTripS().orElseThrow();

        assertThat(tripS(new BatteryHealth(0.8, 1))).isLessThan(baseS);
        assertThat(tripS(new LoadScale(1.1))).isLessThan(baseS);
        assertThat(tripS(new AirShift(-25))).isLessThan(baseS);
    }

    @Test
    void variationsAddUpInOrder() {
        Variation both = Variation.all(List.of(new LoadScale(1.5), new LoadScale(2)));

        assertThat(both.of(BASE.simulation())).isEqualTo(new LoadScale(3).of(BASE.simulation()));
    }

    @Test
    void lessOfTheAlternatorIsLeftWithinBounds() {
        double halfA = maximumA(BASE.of(new AlternatorHeat(0.7)));

        assertThat(halfA).isEqualTo(0.7 * maximumA(BASE), within(1e-9));
        assertThat(maximumA(BASE.of(new AlternatorHeat(0.01)))).isPositive();
    }

    @Test
    void onlyThePhasesMeantLast() {
        List<Phase> phases = BASE.of(new SceneLength(2, phase -> phase.name().equals("Watch")))
                .simulation()
                .scene()
                .phases();

        assertThat(phases.get(0).durationS()).isEqualTo(900);
        assertThat(phases.get(1).durationS()).isEqualTo(2 * StudyTruck.WATCH_S);
    }

    @Test
    void anUnknownCutoffIsRefused() {
        assertThatThrownBy(() -> BASE.of(CutoffSetting.trip("guard", 12, 60)))
                .hasMessageContaining("guard")
                .hasMessageContaining("cutoff");
    }

    private static double maximumA(Question question) {
        return question.simulation().vehicle().alternator().orElseThrow().maximumA(1800);
    }
}

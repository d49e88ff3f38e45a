package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.odds.Sampling;
import curbwatt.engine.study.odds.Spread;
import curbwatt.engine.study.odds.Spread.Shape;
import curbwatt.scenarios.file.Setting;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the file says under {@code studies} reaches the studies; what it leaves out is the usual. */
class StudyPlansTest {

    private static final Scenarios SCENARIOS = new Scenarios();

    private static StudyPlans plans(String... settings) {
        return SCENARIOS
                .demo("lane-watch", List.of(settings).stream().map(Setting::of).toList())
                .studies();
    }

    @Test
    void withoutStudiesTheUsualHolds() {
        assertThat(plans()).isEqualTo(StudyPlans.usual());
        assertThat(plans("studies={}")).isEqualTo(StudyPlans.usual());
        assertThat(plans("studies={\"settings\": {}}")).isEqualTo(StudyPlans.usual());
    }

    @Test
    void theCutoffToSearchIsNamed() {
        assertThat(plans("studies={\"settings\": {\"cutoff\": \"Equipment cutoff\"}}")
                        .settings()
                        .cutoff())
                .contains("Equipment cutoff");
    }

    @Test
    void drawsAndSpreadsReachTheOdds() {
        OddsPlan odds = plans(
                        "studies={\"odds\": {\"runs\": 256, \"seed\": 9, \"indices\": true, \"temperature\":"
                                + " {\"sdK\": 2}, \"batteryHealth\": {\"distribution\": \"triangular\", \"fromPercent\": 70,"
                                + " \"likeliestPercent\": 90, \"toPercent\": 100}, \"loadCurrent\": {\"distribution\": \"fixed\"}}}")
                .odds();

        assertThat(odds.runs()).isEqualTo(256);
        assertThat(odds.seed()).isEqualTo(9);
        assertThat(odds.indices()).isTrue();
        assertThat(odds.sampling()).isEqualTo(Sampling.SOBOL);
        assertThat(odds.spread(Input.TEMPERATURE)).isEqualTo(new Spread(Shape.NORMAL, 0, 2, -12, 12, "K"));
        Spread health = odds.spread(Input.BATTERY_HEALTH);
        assertThat(health.shape()).isEqualTo(Shape.TRIANGULAR);
        assertThat(health.from()).isCloseTo(0.7, within(1e-12));
        assertThat(health.likeliest()).isCloseTo(0.9, within(1e-12));
        assertThat(health.to()).isCloseTo(1, within(1e-12));
        assertThat(odds.spread(Input.LOADS).isSpread()).isFalse();
        assertThat(odds.spread(Input.SENSOR)).isEqualTo(Input.SENSOR.usual());
    }
}

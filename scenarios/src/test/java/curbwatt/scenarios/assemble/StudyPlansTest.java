package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.odds.Sampling;
import curbwatt.engine.study.odds.Spread;
import curbwatt.engine.study.odds.Spread.Shape;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.problem.ScenarioException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the file says under {@code studies} reaches the studies; what it leaves out is the usual. */
class StudyPlansTest {

    private static final Scenarios SCENARIOS = new Scenarios();

    private static StudyPlans plans(String... settings) {
        return SCENARIOS
                .demo(
                        "night-closure",
                        List.of(settings).stream().map(Setting::of).toList())
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
    void rulesOfClosingReachTheSearchInTheirOrder() {
        assertThat(plans(
                                "studies={\"settings\": {\"recloses\": [{\"when\": \"above voltage\", \"aboveV\": 13.2, \"delayS\":"
                                        + " 30}, {\"when\": \"engine running\"}, {\"when\": \"by hand\"}]}}")
                        .settings()
                        .recloses())
                .containsExactly(
                        new RecloseRule.AboveVoltage(13.2, 30),
                        new RecloseRule.EngineRunning(),
                        new RecloseRule.ByHand());
    }

    /** Without trip levels in the file, a level is held against the lowest of those that are tried then. */
    @Test
    void aRuleOfClosingLiesAboveTheLowestOfTheUsualTripLevels() {
        double lowestV = SettingsPlan.usualLevelsV().get(0);
        assertThatThrownBy(() -> plans(closingAbove(lowestV)))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("the lowest is " + lowestV + " V");
        assertThat(plans(closingAbove(lowestV + 0.05)).settings().recloses()).hasSize(1);
    }

    private static String closingAbove(double levelV) {
        return "studies={\"settings\": {\"recloses\": [{\"when\": \"above voltage\", \"aboveV\": " + levelV + "}]}}";
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

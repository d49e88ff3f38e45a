package curbwatt.engine.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StagedCutoffTest {
    private static final SheddingStep SCENE_LIGHTS = step("first", 12.2, 60, "scene lights");
    private static final SheddingStep BOARD = step("second", 12.0, 60, "arrow board");

    @Test
    void knowsEveryCircuitItCanDisconnect() {
        StagedCutoff staged = new StagedCutoff(cutoff("computer"), List.of(SCENE_LIGHTS, BOARD), Set.of("radio"));
        assertThat(staged.circuits()).containsExactlyInAnyOrder("scene lights", "arrow board", "computer");
        assertThat(StagedCutoff.of(cutoff("computer")).circuits()).containsExactly("computer");
    }

    @Test
    void stepsComeInOrder() {
        assertThatThrownBy(() -> new StagedCutoff(cutoff("computer"), List.of(BOARD, SCENE_LIGHTS), Set.of()))
                .hasMessageContaining("'second' at 12.0 V for 60.0 s comes before 'first' at 12.2 V");
        assertThatThrownBy(() -> new StagedCutoff(
                        cutoff("computer"), List.of(step("first", 11.5, 60, "scene lights")), Set.of()))
                .hasMessageContaining("comes before 'cutoff' at 11.8 V");
    }

    @Test
    void oneLevelWithGrowingDelaysIsAnOrderToo() {
        SheddingStep sooner = step("sooner", 11.8, 10, "scene lights");
        assertThat(new StagedCutoff(cutoff("computer"), List.of(sooner), Set.of()).steps())
                .hasSize(1);
        assertThatThrownBy(() -> new StagedCutoff(
                        cutoff("computer"), List.of(step("as late", 11.8, 30, "scene lights")), Set.of()))
                .hasMessageContaining("longer delay");
    }

    @Test
    void theMinimumContinuousLoadIsNeverShed() {
        assertThatThrownBy(() -> new StagedCutoff(cutoff("computer"), List.of(SCENE_LIGHTS), Set.of("scene lights")))
                .hasMessage("circuit 'scene lights' belongs to the minimum continuous load; 'first' must not shed it");
        assertThatThrownBy(() -> new StagedCutoff(cutoff("computer"), List.of(), Set.of("computer")))
                .hasMessageContaining("'cutoff' must not shed it");
    }

    @Test
    void noCircuitAndNoNameTwice() {
        assertThatThrownBy(() -> new StagedCutoff(
                        cutoff("computer"), List.of(SCENE_LIGHTS, step("second", 12, 60, "scene lights")), Set.of()))
                .hasMessageContaining("shed twice");
        assertThatThrownBy(() -> new StagedCutoff(
                        cutoff("computer"), List.of(SCENE_LIGHTS, step("first", 12, 60, "arrow board")), Set.of()))
                .hasMessageContaining("stands twice");
    }

    @Test
    void aStepRecloseLiesAboveItsLevel() {
        assertThatThrownBy(
                        () -> new SheddingStep("first", 12.2, 60, new RecloseRule.AboveVoltage(12.2, 5), Set.of("a")))
                .hasMessage("recloseV of step 'first' is 12.2 V; it must lie above shedV, 12.2 V");
        assertThatThrownBy(() -> new SheddingStep("first", 12.2, 60, new RecloseRule.ByHand(), Set.of()))
                .hasMessageContaining("at least one circuit");
    }

    private static SheddingStep step(String name, double levelV, double delayS, String circuit) {
        return new SheddingStep(name, levelV, delayS, new RecloseRule.AboveVoltage(13.2, 30), Set.of(circuit));
    }

    private static LowVoltageCutoff cutoff(String circuit) {
        return new LowVoltageCutoff(
                "cutoff",
                new SensePoint.Node(),
                0,
                0,
                OptionalDouble.empty(),
                11.8,
                30,
                new RecloseRule.EngineRunning(),
                OptionalDouble.empty(),
                Set.of(circuit));
    }
}

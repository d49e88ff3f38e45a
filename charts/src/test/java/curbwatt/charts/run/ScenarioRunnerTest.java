package curbwatt.charts.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.simulation.Fidelity;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScenarioRunnerTest {

    @Test
    void theCloseUpShowsTheFirstTrip() {
        RunStory story = SampleRun.CUT_OFF_EARLY.story();
        double tripS = story.result().events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .findFirst()
                .orElseThrow()
                .timeS();
        List<WaveformPoint> waveform = story.waveform();
        assertThat(waveform.get(0).timeS()).isLessThan(tripS - 3);
        assertThat(waveform.get(waveform.size() - 1).timeS()).isGreaterThan(tripS);
    }

    @Test
    void withoutATripItShowsTheLowestVoltageWithTheEngineOff() {
        RunStory story = SampleRun.HOLDS.story();
        double lowestV = story.waveform().stream()
                .mapToDouble(WaveformPoint::nodeV)
                .min()
                .orElseThrow();
        // the close-up follows every edge, the run long steps
        assertThat(lowestV).isCloseTo(story.result().lowestV(), within(1e-4));
    }

    @Test
    void whereBothFollowEveryEdgeTheCloseUpIsTheRunItself() {
        RunStory story = new ScenarioRunner(SampleScenario.holds(), Fidelity.RESOLVED).run(share -> {});
        double lowestV = story.waveform().stream()
                .mapToDouble(WaveformPoint::nodeV)
                .min()
                .orElseThrow();
        assertThat(lowestV).isEqualTo(story.result().lowestV());
    }

    @Test
    void theCloseUpRepeatsTheRunItself() {
        RunStory story = SampleRun.CUT_OFF_EARLY.story();
        double fromS = story.waveform().get(0).timeS();
        double toS = story.waveform().get(story.waveform().size() - 1).timeS();
        double lowestV = story.waveform().stream()
                .mapToDouble(WaveformPoint::nodeV)
                .min()
                .orElseThrow();
        double lowestInTraceV = story.trace().rows().stream()
                .filter(row -> row.timeS() >= fromS
                        && row.timeS() <= toS + story.trace().spacingS())
                .mapToDouble(row -> row.nodeMinV())
                .min()
                .orElseThrow();
        assertThat(lowestV).isGreaterThan(lowestInTraceV - 1e-4);
        assertThat(lowestV - lowestInTraceV).isLessThan(0.01);
    }

    @Test
    void progressRisesToOneAndChangesNothing() {
        List<Double> shares = new ArrayList<>();
        RunStory story = new ScenarioRunner(SampleScenario.holds()).run(shares::add);
        assertThat(shares).isSorted().last().isEqualTo(1.0);
        assertThat(story.result()).isEqualTo(SampleRun.HOLDS.story().result());
        assertThat(story.trace()).isEqualTo(SampleRun.HOLDS.story().trace());
    }
}

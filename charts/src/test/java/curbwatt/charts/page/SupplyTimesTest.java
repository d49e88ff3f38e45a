package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.ScenarioRunner;
import curbwatt.engine.result.CircuitSummary;
import curbwatt.engine.result.LoadSummary;
import curbwatt.scenarios.assemble.Scenarios;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The times without supply add up to what the engine itself counted. */
class SupplyTimesTest {

    private static final Offset<Double> AN_INSTANT = Offset.offset(0.01);

    @ParameterizedTest
    @ValueSource(strings = {"lane-watch", "shed-in-steps", "winter-breakdown", "two-batteries"})
    void outagesAddUp(String demo) {
        RunStory story = new ScenarioRunner(new Scenarios().demo(demo)).run(share -> {});
        SupplyTimes times = SupplyTimes.of(story);
        for (CircuitSummary circuit : story.result().circuits()) {
            assertThat(length(times.without(circuit.circuit())))
                    .as(circuit.circuit())
                    .isCloseTo(circuit.disconnectedS(), AN_INSTANT);
        }
        for (LoadSummary load : story.result().loads()) {
            assertThat(length(times.silent(load.load()))).as(load.load()).isCloseTo(load.droppedOutS(), AN_INSTANT);
        }
    }

    private static double length(List<SupplyTimes.Span> spans) {
        return spans.stream().mapToDouble(span -> span.toS() - span.fromS()).sum();
    }
}

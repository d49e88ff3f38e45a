package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.charts.run.RunStory;
import curbwatt.engine.budget.LoadBudget;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.List;

/** What hangs on the vehicle: which load is on when, in which rhythm, and what it draws. */
final class LoadsJson {

    private LoadsJson() {}

    /** Circuits with the times in which they have no supply. */
    static List<JsonObject> circuits(RunStory story) {
        SupplyTimes times = SupplyTimes.of(story);
        return story.scenario().vehicle().circuits().stream()
                .map(circuit -> new JsonObject()
                        .with("name", circuit.name())
                        .with("without", spans(times.without(circuit.name()))))
                .toList();
    }

    /** Loads, circuit by circuit, with their rhythm and the times in which they have fallen silent. */
    static List<JsonObject> loads(RunStory story) {
        SupplyTimes times = SupplyTimes.of(story);
        List<JsonObject> loads = new ArrayList<>();
        for (Circuit circuit : story.scenario().vehicle().circuits()) {
            for (Load load : circuit.loads()) {
                loads.add(new JsonObject()
                        .with("name", load.name())
                        .with("circuit", circuit.name())
                        .with(
                                "on",
                                story.scenario().scene().phases().stream()
                                        .map(phase -> load.isOnIn(phase.stages()))
                                        .toList())
                        .with("rhythm", rhythm(load.pattern()))
                        .with("silent", spans(times.silent(load.name()))));
            }
        }
        return loads;
    }

    /** What each phase draws, load by load, at a steady voltage. */
    static List<JsonObject> budgets(ReadyScenario scenario) {
        return scenario.scene().phases().stream()
                .map(phase -> budget(LoadBudget.of(scenario.vehicle(), phase), phase))
                .toList();
    }

    private static JsonObject budget(LoadBudget budget, Phase phase) {
        return new JsonObject()
                .with("phase", budget.phase())
                .with("voltageV", budget.voltageV())
                .with("meanA", budget.meanA())
                .with("peakA", budget.peakA())
                .with("alternatorA", budget.alternatorA())
                .with("balanceRpm", budget.balanceRpm())
                .with(
                        "lowestRpm",
                        phase.mode().isRunning() ? (Object) phase.speed().lowestRpm() : null)
                .with(
                        "meansA",
                        budget.lines().stream().map(LoadBudget.Line::meanA).toList())
                .with(
                        "peaksA",
                        budget.lines().stream().map(LoadBudget.Line::peakA).toList());
    }

    /** Empty on-times: on without a break. A random rhythm has no fixed on-times; its share stands for it. */
    private static JsonObject rhythm(LoadPattern pattern) {
        JsonObject json = new JsonObject().with("share", pattern.onFraction());
        if (pattern instanceof LoadPattern.Flashing flashing) {
            return json.with("everyS", flashing.clock().periodMs() / 1e3)
                    .with("laterS", flashing.phaseMs() / 1e3)
                    .with(
                            "onS",
                            flashing.onIntervals().stream()
                                    .map(on -> List.of(on.fromMs() / 1e3, on.toMs() / 1e3))
                                    .toList());
        }
        if (pattern instanceof LoadPattern.Duty duty) {
            return json.with("everyS", duty.everyS())
                    .with("laterS", duty.offsetS())
                    .with("onS", List.of(List.of(0.0, duty.onS())));
        }
        return json;
    }

    private static List<List<Double>> spans(List<SupplyTimes.Span> spans) {
        return spans.stream().map(span -> List.of(span.fromS(), span.toS())).toList();
    }
}

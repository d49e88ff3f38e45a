package curbwatt.charts.page;

import curbwatt.charts.figure.EventLabel;
import curbwatt.charts.output.JsonObject;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.Cautions;
import curbwatt.charts.wording.DoubtText;
import curbwatt.charts.wording.EventText;
import curbwatt.charts.wording.FindingText;
import curbwatt.charts.wording.Headline;
import curbwatt.charts.wording.KeyFigure;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.Event;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.verdict.Finding;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A run as the page shows it. */
final class RunJson {

    /** A contact that chatters makes thousands of events; a person reads the first. */
    private static final int MOST_EVENTS = 400;

    private RunJson() {}

    static JsonObject of(RunStory story) {
        ReadyScenario scenario = story.scenario();
        return new JsonObject()
                .with("title", scenario.title())
                .with("vehicle", scenario.vehicle().name())
                .with("met", story.verdict().isMet())
                .with("asked", !story.verdict().findings().isEmpty())
                .with("sentence", new Headline(story).sentence())
                .with(
                        "requirements",
                        story.verdict().findings().stream()
                                .map(finding -> requirement(finding, story))
                                .toList())
                .with(
                        "figures",
                        KeyFigure.of(story).stream().map(RunJson::figure).toList())
                .with("durationS", story.result().durationS())
                .with("phases", phases(story))
                .with("levels", levels(story))
                .with("marks", marks(story))
                .with("events", events(story))
                .with("eventCount", story.result().events().size())
                .with("trace", TraceJson.of(story.trace()))
                .with("circuits", LoadsJson.circuits(story))
                .with("loads", LoadsJson.loads(story))
                .with("budgets", LoadsJson.budgets(scenario))
                .with("doubts", DoubtText.of(story))
                .with("assumptions", scenario.assumptions())
                .with("cautions", Cautions.of(scenario.vehicle(), scenario.scene()))
                .with("warnings", ProblemJson.of(scenario.warnings()));
    }

    private static JsonObject requirement(Finding finding, RunStory story) {
        FindingText text = new FindingText(finding, story);
        return new JsonObject()
                .with("met", finding.met())
                .with("asked", text.asked())
                .with("found", text.found())
                .with("limit", text.limit())
                .with("reason", text.reason());
    }

    private static JsonObject figure(KeyFigure figure) {
        return new JsonObject()
                .with("name", figure.name())
                .with("value", figure.value())
                .with("remark", figure.remark());
    }

    private static List<JsonObject> phases(RunStory story) {
        List<Phase> phases = story.scenario().scene().phases();
        return IntStream.range(0, phases.size())
                .mapToObj(i -> phase(phases.get(i), story.result().phases().get(i)))
                .toList();
    }

    private static JsonObject phase(Phase phase, PhaseSummary summary) {
        return new JsonObject()
                .with("name", phase.name())
                .with("mode", phase.mode().name().toLowerCase(Locale.ROOT))
                .with("startS", summary.startS())
                .with("endS", summary.startS() + summary.durationS())
                .with("engineRan", summary.engineRan());
    }

    private static List<JsonObject> levels(RunStory story) {
        List<JsonObject> levels = new ArrayList<>();
        for (LowVoltageCutoff cutoff : story.scenario().vehicle().cutoffs()) {
            levels.add(level("trip", cutoff.tripV(), cutoff));
            cutoff.warningV().ifPresent(warningV -> levels.add(level("warning", warningV, cutoff)));
            if (cutoff.reclose() instanceof RecloseRule.AboveVoltage above) {
                levels.add(level("reclose", above.levelV(), cutoff));
            }
        }
        return levels;
    }

    private static JsonObject level(String kind, double levelV, LowVoltageCutoff owner) {
        return new JsonObject().with("kind", kind).with("levelV", levelV).with("owner", owner.name());
    }

    private static List<JsonObject> marks(RunStory story) {
        return EventLabel.of(story).stream()
                .map(label -> new JsonObject()
                        .with("timeS", label.timeS())
                        .with("words", label.words())
                        .with("tone", label.tone().name().toLowerCase(Locale.ROOT))
                        .with(
                                "voltageV",
                                label.hasShownVoltage() ? label.events().get(0).voltageV() : null))
                .toList();
    }

    private static List<JsonObject> events(RunStory story) {
        return story.result().events().stream()
                .limit(MOST_EVENTS)
                .map(RunJson::event)
                .toList();
    }

    private static JsonObject event(Event event) {
        return new JsonObject()
                .with("timeS", event.timeS())
                .with("at", PlainText.timeToSecond(event.timeS()))
                .with("sentence", EventText.sentence(event))
                .with("charge", PlainText.percent(event.stateOfChargeFraction()));
    }
}

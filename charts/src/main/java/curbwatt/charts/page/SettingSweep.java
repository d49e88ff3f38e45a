package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.Headline;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.CutoffSetting;
import curbwatt.scenarios.assemble.ReadyScenario;

/**
 * A scenario that asks for nothing, with other settings of one of its cutoffs: when each trips, and whether the engine
 * starts afterwards. None of them can fail.
 *
 * @param scenario the scenario as it is
 * @param cutoff name of the cutoff
 * @param runs runs it
 */
record SettingSweep(ReadyScenario scenario, String cutoff, PageRun runs) {

    /** A sentence needs a trace only to say when a charge was not kept. */
    private static final int POINTS = 120;

    /** What comes of a trip level and a delay; {@code outcome} is {@code impossible} where they contradict the rest. */
    JsonObject at(double tripV, double delayS, Watch watch) {
        ReadyScenario changed;
        try {
            changed = changed(tripV, delayS);
        } catch (IllegalArgumentException e) {
            return new JsonObject()
                    .with("outcome", "impossible")
                    .with("short", "–")
                    .with("words", "can't be set")
                    .with("sentence", e.getMessage());
        }
        RunStory story = runs.story(changed, POINTS, watch);
        boolean starts = story.result().restartTimeS().isEmpty();
        String trips = shortly(story);
        return new JsonObject()
                .with("outcome", starts ? "asksNothing" : "noStart")
                .with("short", starts ? trips : "no start")
                .with("words", starts ? trips : "would not start")
                .with("sentence", new Headline(story).sentence());
    }

    /** What fits into a square: when the cutoff first opens. */
    private String shortly(RunStory story) {
        return story.result().events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED
                        && event.subject().equals(cutoff))
                .mapToDouble(Event::timeS)
                .mapToObj(PlainText::time)
                .findFirst()
                .orElse("no trip");
    }

    private ReadyScenario changed(double tripV, double delayS) {
        Simulation changed =
                CutoffSetting.trip(cutoff, tripV, delayS).of(Simulation.of(scenario.vehicle(), scenario.scene()));
        return scenario.withVehicle(changed.vehicle());
    }
}

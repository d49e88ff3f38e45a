package curbwatt.charts.page;

import curbwatt.scenarios.assemble.Scenarios;
import java.util.Optional;

/**
 * Runs the first scenario a few times before anybody asks: Java compiles well only what has run for a while, and the first
 * turns of a knob would be that while. It stands in line like any other and takes one place, so that a hand on a knob has
 * the other.
 *
 * @param scenarios reads the scenario
 * @param turns who may compute
 * @param runs runs it
 */
record WarmUp(Scenarios scenarios, Turns turns, PageRun runs) {

    /** After so many turns the time of a run goes down no further. */
    private static final int MOST_RUNS = 240;

    /** A long scene is warm sooner than it has run so often. */
    private static final double LONGEST_S = 8;

    /** Runs it, and keeps nothing of what comes out. */
    void run(FirstScenario first) {
        Watch watch = Watch.over(new TabWork().begin("warm-up", Optional.empty()), LONGEST_S, () -> {});
        try {
            for (int i = 0; i < MOST_RUNS; i++) {
                turns.take(
                        watch,
                        () -> Visit.spelt(RunJson.of(
                                runs.story(scenarios.read(first.name(), first.text()), RunEndpoint.POINTS, watch))));
            }
        } catch (RuntimeException e) {
            // its time is over, or the page will tell what is wrong when it runs the scenario itself
        }
    }
}

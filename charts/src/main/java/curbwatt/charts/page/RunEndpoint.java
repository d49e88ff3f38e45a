package curbwatt.charts.page;

import curbwatt.charts.run.RunStory;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import java.io.IOException;

/**
 * Runs a scenario and answers with the verdict, the events and the course of voltage and charge.
 *
 * @param scenarios reads the scenario
 * @param work what is under way
 * @param turns who may compute
 * @param runs runs it
 */
record RunEndpoint(Scenarios scenarios, TabWork work, Turns turns, PageRun runs) implements Endpoint {

    /** Points along the scene: more than a chart has columns in which a line can be told from its neighbour. */
    static final int POINTS = 600;

    private static final double LONGEST_S = 20;

    /** Waiting in line behind others is no fault of the scene: many tabs at once are slow, and none is turned away. */
    private static final double LONGEST_WAIT_S = 120;

    @Override
    public String method() {
        return "POST";
    }

    @Override
    public void answer(Visit visit) throws IOException {
        String text = visit.text();
        TabWork.Ticket ticket = work.begin("run", visit.header("Curbwatt-Tab"));
        try {
            Watch waiting = Watch.over(ticket, LONGEST_WAIT_S, () -> {});
            Timing timing = new Timing();
            byte[] answer = turns.take(waiting, () -> {
                timing.end("wait");
                Watch watch = Watch.over(ticket, LONGEST_S, () -> {});
                ReadyScenario scenario = scenarios.read("scenario", text);
                timing.end("read");
                RunStory story = runs.story(scenario, POINTS, watch);
                timing.end("run");
                byte[] spelt = Visit.spelt(RunJson.of(story));
                timing.end("spell");
                return spelt;
            });
            visit.answerHeader("Server-Timing", timing.header());
            visit.sendJson(200, answer);
        } finally {
            work.end(ticket);
        }
    }
}

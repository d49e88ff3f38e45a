package curbwatt.charts.page;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.verdict.Judge;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import java.io.IOException;
import java.util.List;

/**
 * Runs a scenario and answers with the verdict, the events and the course of voltage and charge.
 *
 * @param scenarios reads the scenario
 * @param work what is under way
 * @param turns who may compute
 */
record RunEndpoint(Scenarios scenarios, TabWork work, Turns turns) implements Endpoint {

    /** Points along the scene: more than a chart has columns in which a line can be told from its neighbour. */
    static final int POINTS = 600;

    private static final double FINEST_SPACING_S = 0.1;
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
                RunStory story = story(scenario, POINTS, watch);
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

    /** A run in long steps over many flashes, with a trace of about so many points: a hand on a knob waits for it. */
    static RunStory story(ReadyScenario scenario, int points, Watch watch) {
        double spacingS = Math.max(FINEST_SPACING_S, scenario.scene().durationS() / points);
        TraceRecorder recorder = new TraceRecorder(
                spacingS,
                scenario.vehicle().circuits().stream().map(Circuit::name).toList());
        RunResult result = Simulation.of(scenario.vehicle(), scenario.scene())
                .run(recorder.and(watch), StepControl.usual(), Fidelity.ENVELOPE);
        return new RunStory(
                scenario,
                result,
                recorder.trace(),
                List.of(),
                new Judge(scenario.vehicle(), scenario.scene(), scenario.requirements()).judge(result));
    }
}

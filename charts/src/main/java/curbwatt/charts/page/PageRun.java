package curbwatt.charts.page;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.clock.FlashLayouts;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.verdict.Judge;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;

/**
 * Runs scenarios for the page: in long steps over many flashes, since a hand on a knob waits for it.
 *
 * @param layouts how lamps flash, which most knobs do not change
 */
record PageRun(FlashLayouts layouts) {

    private static final double FINEST_SPACING_S = 0.1;

    /** Knows no flashes yet. */
    PageRun() {
        this(new FlashLayouts());
    }

    /** A run with a trace of about so many points. */
    RunStory story(ReadyScenario scenario, int points, Watch watch) {
        double spacingS = Math.max(FINEST_SPACING_S, scenario.scene().durationS() / points);
        TraceRecorder recorder = new TraceRecorder(
                spacingS,
                scenario.vehicle().circuits().stream().map(Circuit::name).toList());
        RunResult result = Simulation.of(scenario.vehicle(), scenario.scene())
                .sharing(layouts)
                .run(recorder.and(watch), StepControl.usual(), Fidelity.ENVELOPE);
        return new RunStory(
                scenario,
                result,
                recorder.trace(),
                List.of(),
                new Judge(scenario.vehicle(), scenario.scene(), scenario.requirements()).judge(result));
    }
}

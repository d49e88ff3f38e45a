package curbwatt.charts.run;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.simulation.record.WaveformRecorder;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.verdict.Judge;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * Runs a scenario, judges it, and takes a close-up at the moment that matters most.
 *
 * @param scenario what to run
 */
public record ScenarioRunner(ReadyScenario scenario) {

    /**
     * Runs the scenario.
     *
     * @param progress hears the share of the run that is done, 0 … 1; it can't change the outcome
     */
    public RunStory run(DoubleConsumer progress) {
        Scene scene = scenario.scene();
        TraceRecorder recorder = new TraceRecorder(
                scenario.traceSpacingS(),
                scenario.vehicle().circuits().stream().map(Circuit::name).toList());
        RunResult result = Simulation.of(scenario.vehicle(), scene)
                .run(recorder.and(new RunProgress(scene.durationS(), progress)));
        Trace trace = recorder.trace();
        List<WaveformPoint> waveform =
                CloseUp.of(scenario, result, trace).map(this::closeUp).orElse(List.of());
        return new RunStory(
                scenario,
                result,
                trace,
                waveform,
                new Judge(scenario.vehicle(), scene, scenario.requirements()).judge(result));
    }

    /** A second run as far as the window's end: every step of a few seconds is kept, and of those alone. */
    private List<WaveformPoint> closeUp(CloseUp window) {
        WaveformRecorder recorder = new WaveformRecorder(window.fromS(), window.toS());
        upTo(window.toS())
                .ifPresent(scene -> Simulation.of(scenario.vehicle(), scene).run(recorder));
        return recorder.points();
    }

    private Optional<Scene> upTo(double endS) {
        Scene scene = scenario.scene();
        List<Phase> phases = new ArrayList<>();
        double startS = 0;
        for (Phase phase : scene.phases()) {
            if (endS <= startS) {
                break;
            }
            double leftS = Math.max(1, endS - startS);
            phases.add(
                    leftS >= phase.durationS()
                            ? phase
                            : new Phase(phase.name(), phase.mode(), leftS, phase.air(), phase.speed(), phase.stages()));
            startS += phase.durationS();
        }
        return phases.isEmpty() ? Optional.empty() : Optional.of(new Scene(scene.name(), scene.start(), phases));
    }
}

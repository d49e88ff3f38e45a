package curbwatt.charts.run;

import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.WaveformRecorder;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * Runs a scenario, judges it, takes a close-up at the moment that matters most, and tries other timings of its heads.
 *
 * @param scenario what to run
 * @param fidelity how its flashes are followed
 */
public record ScenarioRunner(ReadyScenario scenario, Fidelity fidelity) {

    /** In long steps. */
    public ScenarioRunner(ReadyScenario scenario) {
        this(scenario, Fidelity.ENVELOPE);
    }

    /**
     * Runs the scenario.
     *
     * @param progress hears the share of the run that is done, 0 … 1; it can't change the outcome
     */
    public RunStory run(DoubleConsumer progress) {
        FlashComparer comparer = new FlashComparer(scenario, fidelity, this::closeUp);
        List<TimedRun> runs = comparer.runs(new RunProgress(scenario.scene().durationS(), progress));
        TimedRun written = runs.stream().filter(TimedRun::asWritten).findFirst().orElseThrow();
        return new RunStory(
                scenario,
                written.story().result(),
                written.story().trace(),
                written.momentThatMatters(),
                written.story().verdict(),
                comparer.comparison(runs));
    }

    private List<WaveformPoint> closeUp(RunStory written) {
        return CloseUp.of(scenario, written.result(), written.trace())
                .map(this::closeUp)
                .orElse(List.of());
    }

    /** A second run as far as the window's end: every step of a few seconds is kept, and of those alone. */
    private List<WaveformPoint> closeUp(CloseUp window) {
        WaveformRecorder recorder = new WaveformRecorder(window.fromS(), window.toS());
        upTo(window.toS())
                .ifPresent(
                        scene -> Simulation.of(scenario.vehicle(), scene).run(recorder, StepControl.usual(), fidelity));
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
            phases.add(leftS >= phase.durationS() ? phase : phase.lasting(leftS));
            startS += phase.durationS();
        }
        return phases.isEmpty() ? Optional.empty() : Optional.of(new Scene(scene.name(), scene.start(), phases));
    }
}

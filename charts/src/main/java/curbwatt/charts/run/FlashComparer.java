package curbwatt.charts.run;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.LoadPeakRecorder;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.simulation.record.WaveformRecorder;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.FlashTiming;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Judge;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Runs a scenario as written and, where heads share a clock, with those heads together and interleaved.
 *
 * @param scenario what to run
 * @param fidelity how its flashes are followed
 * @param closer looks closely at the moment that matters most in the run as written: a run of its own, made while others go on
 */
record FlashComparer(ReadyScenario scenario, Fidelity fidelity, Function<RunStory, List<WaveformPoint>> closer) {

    /** How long a phase has gone on when its flashing is looked at (s): the voltage has settled by then. */
    private static final double SETTLED_S = 60;

    private static final int CYCLES = 3;

    /**
     * Runs them, as many at a time as there are processors.
     *
     * @param watch watches the run as written
     * @return the runs, that as written among them; one alone: there is nothing to compare
     */
    List<TimedRun> runs(Recorder watch) {
        Optional<CloseUp> closeUp = closeUp();
        if (closeUp.isEmpty()) {
            return List.of(run(TimedRun.Timing.AS_WRITTEN, scenario.vehicle(), Optional.empty(), watch));
        }
        Vehicle written = scenario.vehicle();
        Vehicle together = FlashTiming.TOGETHER.of(written);
        Vehicle interleaved = FlashTiming.INTERLEAVED.of(written);
        List<TimedRun.Timing> timings = new ArrayList<>(List.of(TimedRun.Timing.TOGETHER));
        List<Vehicle> vehicles = new ArrayList<>(List.of(together));
        if (!written.equals(together) && !written.equals(interleaved)) {
            timings.add(TimedRun.Timing.AS_WRITTEN);
            vehicles.add(written);
        }
        timings.add(TimedRun.Timing.INTERLEAVED);
        vehicles.add(interleaved);
        return new RunPool(Math.min(vehicles.size(), Runtime.getRuntime().availableProcessors()))
                .each(
                        IntStream.range(0, vehicles.size()).boxed().toList(),
                        i -> run(
                                timings.get(i),
                                vehicles.get(i),
                                closeUp,
                                vehicles.get(i).equals(written) ? watch : Recorder.none()),
                        StudyWatch.none());
    }

    /** The comparison of such runs; empty: there is nothing to compare. */
    Optional<FlashComparison> comparison(List<TimedRun> runs) {
        if (runs.size() < 2) {
            return Optional.empty();
        }
        List<Load> heads = FlashTiming.clocks(scenario.vehicle()).values().stream()
                .flatMap(List::stream)
                .toList();
        boolean onEquipment = scenario.vehicle().circuits().stream()
                .filter(circuit -> circuit.node() == BusNode.EQUIPMENT)
                .anyMatch(circuit -> circuit.loads().stream().anyMatch(heads::contains));
        return Optional.of(new FlashComparison(
                heads,
                onEquipment ? BusNode.EQUIPMENT : BusNode.STARTER,
                closeUp().orElseThrow(),
                runs));
    }

    private TimedRun run(TimedRun.Timing timing, Vehicle vehicle, Optional<CloseUp> closeUp, Recorder watch) {
        Scene scene = scenario.scene();
        TraceRecorder trace = new TraceRecorder(
                scenario.traceSpacingS(),
                vehicle.circuits().stream().map(Circuit::name).toList(),
                vehicle.cutoffs().stream().map(LowVoltageCutoff::name).toList());
        LoadPeakRecorder peak = new LoadPeakRecorder();
        WaveformRecorder waveform = new WaveformRecorder(
                closeUp.map(CloseUp::fromS).orElse(0.0),
                closeUp.map(CloseUp::toS).orElse(0.0));
        RunResult result = Simulation.of(vehicle, scene)
                .run(trace.and(peak).and(waveform).and(watch), StepControl.usual(), fidelity);
        RunStory story = new RunStory(
                scenario.withVehicle(vehicle),
                result,
                trace.trace(),
                waveform.points(),
                new Judge(vehicle, scene, scenario.requirements()).judge(result));
        boolean asWritten = vehicle.equals(scenario.vehicle());
        return new TimedRun(timing, asWritten, story, peak.peakA(), asWritten ? closer.apply(story) : List.of());
    }

    /**
     * A few cycles of the slowest shared clock, in the first phase with the engine off in which such a clock has two
     * heads to time; without one, in the first such phase.
     */
    private Optional<CloseUp> closeUp() {
        Scene scene = scenario.scene();
        List<Phase> phases = scene.phases();
        OptionalInt index = IntStream.range(0, phases.size())
                .filter(i -> longestMs(phases.get(i)) > 0)
                .boxed()
                .min((one, other) -> Boolean.compare(
                        phases.get(one).mode().isRunning(),
                        phases.get(other).mode().isRunning()))
                .map(OptionalInt::of)
                .orElseGet(OptionalInt::empty);
        if (index.isEmpty()) {
            return Optional.empty();
        }
        Phase phase = phases.get(index.getAsInt());
        double fromS = scene.startS(index.getAsInt()) + Math.min(SETTLED_S, phase.durationS() / 2);
        double lengthS = Math.min(CYCLES * longestMs(phase) / 1000, phase.durationS() / 4);
        return Optional.of(new CloseUp(fromS, fromS + lengthS));
    }

    /** Longest period of the clocks that have at least two heads on in a phase (ms); 0: there is none. */
    private double longestMs(Phase phase) {
        return FlashTiming.clocks(scenario.vehicle()).values().stream()
                .filter(loads -> loads.stream()
                                .filter(load -> load.isOnIn(phase.stages()))
                                .mapToInt(Load::heads)
                                .sum()
                        > 1)
                .mapToDouble(loads ->
                        ((LoadPattern.Flashing) loads.get(0).pattern()).clock().periodMs())
                .max()
                .orElse(0);
    }
}

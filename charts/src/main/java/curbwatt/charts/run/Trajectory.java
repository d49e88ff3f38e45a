package curbwatt.charts.run;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.Trace;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.vehicle.Circuit;
import java.util.Objects;

/**
 * One of several runs that are laid over each other.
 *
 * @param name what it is called in the picture
 * @param simulation what was run
 * @param result what came out
 * @param trace what was recorded along it
 */
public record Trajectory(String name, Simulation simulation, RunResult result, Trace trace) {

    /** Refuses missing parts. */
    public Trajectory {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(simulation, "simulation");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(trace, "trace");
    }

    /**
     * Runs a scene and records it.
     *
     * @param spacingS time between lines of the trace (s)
     */
    public static Trajectory of(String name, Simulation simulation, double spacingS) {
        TraceRecorder recorder = new TraceRecorder(
                spacingS,
                simulation.vehicle().circuits().stream().map(Circuit::name).toList());
        RunResult result = simulation.run(recorder);
        return new Trajectory(name, simulation, result, recorder.trace());
    }

    /** The same run by another name. */
    public Trajectory named(String other) {
        return new Trajectory(other, simulation, result, trace);
    }
}

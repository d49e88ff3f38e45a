package curbwatt.engine.simulation;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Objects;

/**
 * A vehicle in a scene, ready to run. A value: running it leaves nothing behind, and the same run gives the same
 * result.
 *
 * @param vehicle the vehicle
 * @param scene the scene
 */
public record Simulation(Vehicle vehicle, Scene scene) {

    /** Refuses missing parts. */
    public Simulation {
        Objects.requireNonNull(vehicle, "vehicle");
        Objects.requireNonNull(scene, "scene");
    }

    /** A simulation of a vehicle in a scene. */
    public static Simulation of(Vehicle vehicle, Scene scene) {
        return new Simulation(vehicle, scene);
    }

    /** The same scene with another vehicle. */
    public Simulation with(Vehicle other) {
        return new Simulation(other, scene);
    }

    /** The same vehicle in another scene. */
    public Simulation in(Scene other) {
        return new Simulation(vehicle, other);
    }

    /** Runs the scene from start to end in long steps where it may, handing each step to the recorder. */
    public RunResult run(Recorder recorder) {
        return run(recorder, StepControl.usual());
    }

    /** Runs it with steps of another fineness. */
    public RunResult run(Recorder recorder, StepControl control) {
        return run(recorder, control, Fidelity.ENVELOPE);
    }

    /** Runs it edge by edge, or with steps of another fineness. */
    public RunResult run(Recorder recorder, StepControl control, Fidelity fidelity) {
        return new SceneRun(vehicle, scene, control, fidelity, recorder).run();
    }
}

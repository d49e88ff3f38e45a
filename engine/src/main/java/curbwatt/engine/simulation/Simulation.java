package curbwatt.engine.simulation;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.clock.FlashLayouts;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Objects;
import java.util.Optional;

/**
 * A vehicle in a scene, ready to run. A value: running it leaves nothing behind, and the same run gives the same
 * result.
 *
 * @param vehicle the vehicle
 * @param scene the scene
 * @param layouts how its flashes lie in time, as far as runs have found it out; no part of its value
 */
public record Simulation(Vehicle vehicle, Scene scene, FlashLayouts layouts) {

    /** Refuses missing parts. */
    public Simulation {
        Objects.requireNonNull(vehicle, "vehicle");
        Objects.requireNonNull(scene, "scene");
        Objects.requireNonNull(layouts, "layouts");
    }

    /** A simulation of a vehicle in a scene. */
    public static Simulation of(Vehicle vehicle, Scene scene) {
        return new Simulation(vehicle, scene, new FlashLayouts());
    }

    /** The same, with what runs of other simulations have found out about flashes. */
    public Simulation sharing(FlashLayouts others) {
        return new Simulation(vehicle, scene, others);
    }

    /** The same scene with another vehicle. */
    public Simulation with(Vehicle other) {
        return new Simulation(other, scene, layouts);
    }

    /** The same vehicle in another scene. */
    public Simulation in(Scene other) {
        return new Simulation(vehicle, other, layouts);
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
        return new SceneRun(vehicle, scene, layouts, control, fidelity, recorder).run();
    }

    /** Runs it as long as the engine would start at every moment; empty: it did not come to the scene's end. */
    public Optional<RunResult> runWhileItStarts(Recorder recorder) {
        return new SceneRun(vehicle, scene, layouts, StepControl.usual(), Fidelity.ENVELOPE, recorder)
                .runWhileItStarts();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Simulation simulation
                && vehicle.equals(simulation.vehicle)
                && scene.equals(simulation.scene);
    }

    @Override
    public int hashCode() {
        return Objects.hash(vehicle, scene);
    }
}

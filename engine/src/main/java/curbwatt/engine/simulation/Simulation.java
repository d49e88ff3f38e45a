package curbwatt.engine.simulation;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;

/** A vehicle in a scene, ready to run. */
public record Simulation(Vehicle vehicle, Scene scene) {

    /** A simulation of a vehicle in a scene. */
    public static Simulation of(Vehicle vehicle, Scene scene) {
        return new Simulation(vehicle, scene);
    }

    /** Runs the scene from start to end, handing each step to the recorder. */
    public RunResult run(Recorder recorder) {
        if (scene.phases().isEmpty()) {
            return null;
        }
        throw new UnsupportedOperationException("being written");
    }
}

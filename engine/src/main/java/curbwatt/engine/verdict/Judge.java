package curbwatt.engine.verdict;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;

/** Holds a run against what was asked of it. */
public record Judge(Vehicle vehicle, Scene scene, List<Requirement> requirements) {

    /** The verdict on a run. */
    public Verdict judge(RunResult result) {
        if (requirements.isEmpty()) {
            return new Verdict(List.of(), List.of());
        }
        throw new UnsupportedOperationException("being written" + result);
    }
}

package curbwatt.engine.bench;

import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.Recorder;
import java.util.function.Supplier;

/** The standard scene, ready to run in long steps; {@link CountingLoader} makes it by name. */
public final class CountedRun implements Supplier<Object> {

    private final Simulation simulation = FlashingScene.standard().simulation();

    /** Runs it. */
    @Override
    public Object get() {
        return simulation.run(Recorder.none(), StepControl.usual(), Fidelity.ENVELOPE);
    }
}

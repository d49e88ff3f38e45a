package curbwatt.engine.bench;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.Recorder;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One run of the standard scene and of shorter and longer ones, on one thread, without a trace. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SceneBenchmark {

    /** Length of the scene (h). */
    @Param("8")
    public double durationH;

    /** Most that a voltage changes in a step (V). */
    @Param("0.002")
    public double voltageChangeV;

    private FlashingScene scene;
    private Simulation simulation;
    private StepControl control;

    /** Makes the scene. */
    @Setup
    public void prepare() {
        FlashingScene standard = FlashingScene.standard();
        scene = new FlashingScene(standard.loads(), standard.flashHz(), durationH);
        simulation = scene.simulation();
        control = FlashingScene.control(voltageChangeV);
    }

    /** In long steps. */
    @Benchmark
    public RunResult longSteps() {
        return simulation.run(Recorder.none(), control, Fidelity.ENVELOPE);
    }

    /** Edge by edge. */
    @Benchmark
    public RunResult edgeByEdge() {
        return simulation.run(Recorder.none(), control, Fidelity.RESOLVED);
    }

    /** In the hands of a general integrator. */
    @Benchmark
    public IntegratedScene.Outcome integrator() {
        return new IntegratedScene(scene).run();
    }
}

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

/** How a run's cost grows with the rate of the flashes and the number of the loads. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CostBenchmark {

    /** How often the slower clock comes round (1/s). */
    @Param("1.25")
    public double flashHz;

    /** Number of loads. */
    @Param("20")
    public int loads;

    /** How flashes are followed. */
    @Param({"ENVELOPE", "RESOLVED"})
    public Fidelity fidelity;

    private Simulation simulation;

    /** Makes the scene. */
    @Setup
    public void prepare() {
        simulation = new FlashingScene(loads, flashHz, 8).simulation();
    }

    /** One run. */
    @Benchmark
    public RunResult run() {
        return simulation.run(Recorder.none(), StepControl.usual(), fidelity);
    }
}

package curbwatt.engine.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.WarmupMode;

/**
 * Runs the benchmarks, each in a Java machine of its own.
 *
 * @param patience share of the usual time for each, 0.1 … 10; under 1 for a try
 */
record Laboratory(double patience) {

    /** Long enough that all end in a step of many cycles: one of a few lets a buffer grow, once in a run (h). */
    static final double[] DURATIONS_H = {2, 3, 5, 7};

    /** Change of voltage in a step where what a step allocates is asked: so fine that there are many (V). */
    static final double FINEST_V = 1e-4;

    static final double[] RATES_HZ = {0.1, 0.2, 0.5, 1, 2, 5, 10};
    static final int[] LOADS = {1, 2, 5, 10, 20, 50, 100, 200};

    private static final int ROUNDS = 9;
    private static final double MEMORY_S = 5;

    private static final String JVM = "-XX:+UseSerialGC";

    List<Measured> scene() {
        return run(timed(SceneBenchmark.class, "longSteps", 5, 3).forks(5));
    }

    List<Measured> sceneByEdges() {
        return run(timed(SceneBenchmark.class, "edgeByEdge", 3, 5));
    }

    List<Measured> sceneByIntegrator() {
        return run(timed(SceneBenchmark.class, "integrator", 1, 2));
    }

    /**
     * In one Java machine, all warmed up before any is measured: compiled otherwise, the same code may allocate some hundred bytes
     * more or less in a run. Long, since what the harness itself allocates is spread over the runs.
     */
    List<Measured> memory() {
        return run(timed(SceneBenchmark.class, "(longSteps|edgeByEdge)", 2, 1)
                .param("durationH", strings(DURATIONS_H))
                .param("voltageChangeV", String.valueOf(FINEST_V))
                .forks(0)
                .warmupMode(WarmupMode.BULK)
                .measurementTime(seconds(MEMORY_S))
                .addProfiler(GCProfiler.class));
    }

    List<Measured> functions() {
        return run(timed(FunctionBenchmark.class, ".*", 1, 2));
    }

    List<Measured> rates() {
        return run(timed(CostBenchmark.class, "run", 1, 1).param("flashHz", strings(RATES_HZ)));
    }

    List<Measured> loads() {
        String[] loads = Arrays.stream(LOADS).mapToObj(String::valueOf).toArray(String[]::new);
        return run(timed(CostBenchmark.class, "run", 1, 1).param("loads", loads));
    }

    List<Measured> studies() {
        List<Measured> all = new ArrayList<>();
        // turn and turn about in one Java machine: processors that others use too would say more of themselves than of
        // threads
        for (int round = 0; round < ROUNDS; round++) {
            all.addAll(run(shots("settingsMap", round == 0 ? 100 : 1, 3)
                    .forks(0)
                    .warmupMode(WarmupMode.BULK)
                    .param("threads", "1", "2")));
        }
        all.addAll(run(shots("odds", 3, 2).param("threads", "2")));
        all.addAll(run(shots("oddsAtOnce", 0, 1).param("threads", "2")));
        all.addAll(run(shots("dutyYear", 3, 5).param("threads", "1")));
        return all;
    }

    private ChainedOptionsBuilder timed(Class<?> benchmarks, String method, int warmings, int measurings) {
        TimeValue time = seconds(1);
        return shots(benchmarks, method, warmings, measurings).warmupTime(time).measurementTime(time);
    }

    private TimeValue seconds(double usual) {
        return TimeValue.milliseconds(Math.round(1000 * usual * patience));
    }

    private ChainedOptionsBuilder shots(String method, int warmings, int measurings) {
        return shots(StudyBenchmark.class, method, warmings, measurings);
    }

    private ChainedOptionsBuilder shots(Class<?> benchmarks, String method, int warmings, int measurings) {
        return new OptionsBuilder()
                .include(benchmarks.getName().replace(".", "\\.") + "\\." + method + "$")
                .jvmArgs(JVM)
                .forks(1)
                .warmupIterations(warmings)
                .measurementIterations(measurings)
                .shouldFailOnError(true);
    }

    private static String[] strings(double[] values) {
        return Arrays.stream(values).mapToObj(String::valueOf).toArray(String[]::new);
    }

    private static List<Measured> run(ChainedOptionsBuilder options) {
        try {
            return new Runner(options.build()).run().stream().map(Measured::of).toList();
        } catch (RunnerException e) {
            throw new IllegalStateException("a benchmark did not run to its end", e);
        }
    }
}

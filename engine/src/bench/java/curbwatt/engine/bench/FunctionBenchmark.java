package curbwatt.engine.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What one call of a function takes, in a row of independent calls with arguments as the engine has them. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(FunctionBenchmark.CALLS)
public class FunctionBenchmark {

    static final int CALLS = 1000;

    private final double[] arguments = new double[CALLS];

    /** Spreads the arguments from 0.01 to 1. */
    public FunctionBenchmark() {
        for (int i = 0; i < CALLS; i++) {
            arguments[i] = 0.01 + 0.99 * (i * 377 % CALLS) / CALLS;
        }
    }

    @Benchmark
    public double exp() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.exp(-x);
        }
        return sum;
    }

    @Benchmark
    public double expm1() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.expm1(-x);
        }
        return sum;
    }

    @Benchmark
    public double log() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.log(x);
        }
        return sum;
    }

    @Benchmark
    public double log1p() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.log1p(x);
        }
        return sum;
    }

    @Benchmark
    public double pow() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.pow(2, x);
        }
        return sum;
    }

    @Benchmark
    public double sqrt() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.sqrt(x);
        }
        return sum;
    }

    @Benchmark
    public double cbrt() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.cbrt(x);
        }
        return sum;
    }

    @Benchmark
    public double tanh() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.tanh(x);
        }
        return sum;
    }

    @Benchmark
    public double hypot() {
        double sum = 0;
        for (double x : arguments) {
            sum += Math.hypot(x, 1);
        }
        return sum;
    }
}

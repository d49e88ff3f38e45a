package curbwatt.engine.bench;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;

/**
 * What JMH measured of one benchmark.
 *
 * @param method name of the benchmark
 * @param parameters its parameters
 * @param score its mean, in the unit of the benchmark
 * @param allocatedBytes what one run of it allocated (B), if asked
 * @param unit the unit
 */
record Measured(
        String method, Map<String, String> parameters, double score, OptionalDouble allocatedBytes, String unit) {

    static Measured of(RunResult result) {
        BenchmarkParams asked = result.getParams();
        Map<String, String> parameters = new TreeMap<>();
        asked.getParamsKeys().forEach(key -> parameters.put(key, asked.getParam(key)));
        String name = asked.getBenchmark();
        return new Measured(
                name.substring(name.lastIndexOf('.') + 1),
                parameters,
                result.getPrimaryResult().getScore(),
                allocated(result),
                result.getPrimaryResult().getScoreUnit());
    }

    private static OptionalDouble allocated(RunResult result) {
        for (String figure : result.getSecondaryResults().keySet()) {
            if (figure.endsWith("gc.alloc.rate.norm")) {
                return OptionalDouble.of(
                        result.getSecondaryResults().get(figure).getScore());
            }
        }
        return OptionalDouble.empty();
    }

    /** The mean in milliseconds. */
    double ms() {
        return switch (unit) {
            case "ns/op" -> score / 1e6;
            case "us/op" -> score / 1e3;
            case "ms/op" -> score;
            default -> throw new IllegalStateException(method + " is measured in " + unit);
        };
    }

    boolean is(String wanted, String parameter, Object value) {
        return method.equals(wanted) && String.valueOf(value).equals(parameters.get(parameter));
    }
}

package curbwatt.engine.bench;

import java.util.Map;
import java.util.TreeMap;

/**
 * Stands in for {@code java.lang.Math} in classes that {@link CountingLoader} loads, and counts the calls that take long. One
 * thread at a time.
 */
public final class CountedMath {

    private static final Map<String, Long> CALLS = new TreeMap<>();

    private CountedMath() {}

    /** What has been called, and how often, since the last time; forgets it. */
    static Map<String, Long> takeCalls() {
        Map<String, Long> calls = new TreeMap<>(CALLS);
        CALLS.clear();
        return calls;
    }

    private static void count(String function) {
        CALLS.merge(function, 1L, Long::sum);
    }

    public static double exp(double x) {
        count("exp");
        return Math.exp(x);
    }

    public static double expm1(double x) {
        count("expm1");
        return Math.expm1(x);
    }

    public static double log(double x) {
        count("log");
        return Math.log(x);
    }

    public static double log1p(double x) {
        count("log1p");
        return Math.log1p(x);
    }

    public static double pow(double x, double y) {
        count("pow");
        return Math.pow(x, y);
    }

    public static double sqrt(double x) {
        count("sqrt");
        return Math.sqrt(x);
    }

    public static double cbrt(double x) {
        count("cbrt");
        return Math.cbrt(x);
    }

    public static double tanh(double x) {
        count("tanh");
        return Math.tanh(x);
    }

    public static double hypot(double x, double y) {
        count("hypot");
        return Math.hypot(x, y);
    }

    public static double max(double x, double y) {
        return Math.max(x, y);
    }

    public static int max(int x, int y) {
        return Math.max(x, y);
    }

    public static long max(long x, long y) {
        return Math.max(x, y);
    }

    public static double min(double x, double y) {
        return Math.min(x, y);
    }

    public static int min(int x, int y) {
        return Math.min(x, y);
    }

    public static long min(long x, long y) {
        return Math.min(x, y);
    }

    public static double abs(double x) {
        return Math.abs(x);
    }

    public static int abs(int x) {
        return Math.abs(x);
    }

    public static long abs(long x) {
        return Math.abs(x);
    }

    public static long round(double x) {
        return Math.round(x);
    }

    public static double rint(double x) {
        return Math.rint(x);
    }

    public static double floor(double x) {
        return Math.floor(x);
    }

    public static double ceil(double x) {
        return Math.ceil(x);
    }

    public static double signum(double x) {
        return Math.signum(x);
    }

    public static double nextUp(double x) {
        return Math.nextUp(x);
    }

    public static double nextDown(double x) {
        return Math.nextDown(x);
    }

    public static double copySign(double x, double sign) {
        return Math.copySign(x, sign);
    }

    public static long floorMod(long x, long y) {
        return Math.floorMod(x, y);
    }

    public static int floorMod(int x, int y) {
        return Math.floorMod(x, y);
    }

    public static long floorDiv(long x, long y) {
        return Math.floorDiv(x, y);
    }
}

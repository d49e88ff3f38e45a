package curbwatt.engine.numeric;

import java.util.List;

/** Shape-preserving cubic through a monotone table (Fritsch and Carlson 1980); constant outside it. */
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /** Makes the curve from places, rising, and as many values. */
    public MonotoneCubic(List<Double> xs, List<Double> ys) {
        int n = xs.size();
        x = xs.stream().mapToDouble(Double::doubleValue).toArray();
        y = ys.stream().mapToDouble(Double::doubleValue).toArray();
        slope = new double[n];
        double[] secant = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        slope[0] = secant[0];
        slope[n - 1] = secant[n - 2];
        for (int i = 1; i < n - 1; i++) {
            slope[i] = secant[i - 1] * secant[i] <= 0 ? 0 : 2 / (1 / secant[i - 1] + 1 / secant[i]);
        }
    }

    /** Value at a place. */
    public double value(double at) {
        if (at <= x[0]) {
            return y[0];
        }
        for (int i = 1; i < x.length; i++) {
            if (at <= x[i]) {
                double h = x[i] - x[i - 1];
                double t = (at - x[i - 1]) / h;
                double s = 1 - t;
                return y[i - 1] * (1 + 2 * t) * s * s + h * slope[i - 1] * t * s * s + y[i] * t * t * (3 - 2 * t) - h * slope[i] * t * t * s;
            }
        }
        return y[y.length - 1];
    }
}

package curbwatt.engine.wiring;

import java.util.Arrays;

/**
 * Straight lines between the points of a table when both axes are logarithmic; the outermost lines go on. Immutable.
 */
final class LogLogTable {
    private final double[] x;
    private final double[] y;
    private final double[] exponent;

    /** Makes a table of pairs x, y, both above 0, x strictly rising, two pairs at least. */
    LogLogTable(double... pairs) {
        x = new double[pairs.length / 2];
        y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = pairs[2 * i];
            y[i] = pairs[2 * i + 1];
        }
        exponent = new double[x.length - 1];
        for (int i = 0; i < exponent.length; i++) {
            exponent[i] = Math.log(y[i + 1] / y[i]) / Math.log(x[i + 1] / x[i]);
        }
    }

    double first() {
        return x[0];
    }

    double last() {
        return x[x.length - 1];
    }

    double value(double at) {
        int found = Arrays.binarySearch(x, at);
        if (found >= 0) {
            return y[found];
        }
        int i = Math.min(Math.max(-found - 2, 0), exponent.length - 1);
        return y[i] * Math.pow(at / x[i], exponent[i]);
    }
}

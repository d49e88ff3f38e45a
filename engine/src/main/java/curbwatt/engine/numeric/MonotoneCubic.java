package curbwatt.engine.numeric;

import curbwatt.engine.quantity.Require;
import java.util.Arrays;
import java.util.List;

/**
 * Smooth curve through a table that never overshoots it: where the table rises, the curve rises.
 *
 * <p>Piecewise cubic Hermite polynomial with the slopes of F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17
 * (1980) 238, in the harmonic-mean form of F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300.
 * Outside the table the value at the nearer end holds.
 */
public final class MonotoneCubic {
    private final double[] abscissa;
    private final double[] ordinate;
    private final double[] slope;

    /**
     * Makes a curve.
     *
     * @param abscissas strictly rising, two at least
     * @param ordinates one for each abscissa, finite
     * @throws IllegalArgumentException if the abscissas do not rise or the sizes differ
     */
    public MonotoneCubic(List<Double> abscissas, List<Double> ordinates) {
        if (abscissas.size() < 2 || abscissas.size() != ordinates.size()) {
            throw new IllegalArgumentException("table has " + abscissas.size() + " abscissas and " + ordinates.size()
                    + " ordinates, allowed is two or more of each and as many of one as of the other");
        }
        abscissa = abscissas.stream().mapToDouble(Double::doubleValue).toArray();
        ordinate = ordinates.stream().mapToDouble(Double::doubleValue).toArray();
        for (int i = 0; i < abscissa.length; i++) {
            Require.finite("abscissa[" + i + "]", abscissa[i], "");
            Require.finite("ordinate[" + i + "]", ordinate[i], "");
            if (i > 0) {
                Require.inside("abscissa[" + i + "]", abscissa[i], Math.nextUp(abscissa[i - 1]), Double.MAX_VALUE, "");
            }
        }
        slope = slopes(abscissa, ordinate);
    }

    /**
     * Returns the ordinate at {@code x}; outside the table that of the nearer end.
     *
     * @param x abscissa
     */
    public double value(double x) {
        int last = abscissa.length - 1;
        if (x <= abscissa[0]) {
            return ordinate[0];
        }
        if (x >= abscissa[last]) {
            return ordinate[last];
        }
        int found = Arrays.binarySearch(abscissa, x);
        if (found >= 0) {
            return ordinate[found];
        }
        int i = -found - 2;
        double width = abscissa[i + 1] - abscissa[i];
        double t = (x - abscissa[i]) / width;
        double u = 1 - t;
        return u * u * ((1 + 2 * t) * ordinate[i] + t * width * slope[i])
                + t * t * ((1 + 2 * u) * ordinate[i + 1] - u * width * slope[i + 1]);
    }

    private static double[] slopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] width = new double[last];
        double[] secant = new double[last];
        for (int i = 0; i < last; i++) {
            width[i] = x[i + 1] - x[i];
            secant[i] = (y[i + 1] - y[i]) / width[i];
        }
        double[] slope = new double[x.length];
        if (last == 1) {
            Arrays.fill(slope, secant[0]);
            return slope;
        }
        for (int i = 1; i < last; i++) {
            if (secant[i - 1] * secant[i] > 0) {
                double before = 2 * width[i] + width[i - 1];
                double after = width[i] + 2 * width[i - 1];
                slope[i] = (before + after) / (before / secant[i - 1] + after / secant[i]);
            }
        }
        slope[0] = endSlope(width[0], width[1], secant[0], secant[1]);
        slope[last] = endSlope(width[last - 1], width[last - 2], secant[last - 1], secant[last - 2]);
        return slope;
    }

    /** Three-point slope at an end, held within the bounds that keep the curve monotone. */
    private static double endSlope(double width, double nextWidth, double secant, double nextSecant) {
        double slope = ((2 * width + nextWidth) * secant - width * nextSecant) / (width + nextWidth);
        if (slope * secant <= 0) {
            return 0;
        }
        return secant * nextSecant <= 0 && Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
    }
}

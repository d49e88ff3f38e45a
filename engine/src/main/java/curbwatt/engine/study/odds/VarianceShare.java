package curbwatt.engine.study.odds;

import java.util.Arrays;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * Sobol's indices of an input: which share of an outcome's variance goes back to it.
 *
 * <p>From three columns of outcomes: of draws A, of independent draws B, and of draws A with this one input taken from B.
 * First order: mean of B · (AB − A), over the variance (Saltelli and others, Computer Physics Communications 181, 2010, table
 * 2 b). Total: half the mean of (A − AB)², over the variance (Jansen, Computer Physics Communications 117, 1999). The outcomes
 * are taken from their mean first, which leaves the indices as they are and their scatter smaller. Bounds: percentiles of
 * 400 seeded resamples.
 *
 * @param firstFraction share that it has by itself; a small one may come out below 0
 * @param lowFraction lower bound of that with 95 % confidence
 * @param highFraction upper bound of that with 95 % confidence
 * @param totalFraction share with all its interplay with others
 */
public record VarianceShare(double firstFraction, double lowFraction, double highFraction, double totalFraction) {

    private static final int RESAMPLES = 400;

    /**
     * The indices of one input.
     *
     * @param a outcomes of draws A
     * @param b outcomes of draws B
     * @param ab outcomes of draws A with the input of B
     * @param seed what the resampling begins with
     * @throws IllegalArgumentException if the outcomes are all the same
     */
    public static VarianceShare of(double[] a, double[] b, double[] ab, long seed) {
        double mean = (StatUtils.mean(a) + StatUtils.mean(b)) / 2;
        double[] centredA = Arrays.stream(a).map(value -> value - mean).toArray();
        double[] centredB = Arrays.stream(b).map(value -> value - mean).toArray();
        double[] centredAb = Arrays.stream(ab).map(value -> value - mean).toArray();
        int[] all = new int[a.length];
        Arrays.setAll(all, i -> i);
        double first = first(centredA, centredB, centredAb, all);
        if (!Double.isFinite(first)) {
            throw new IllegalArgumentException("outcomes that are all the same have no variance to share");
        }
        RandomGenerator random = new Well19937c(seed);
        double[] resampled = new double[RESAMPLES];
        for (int i = 0; i < RESAMPLES; i++) {
            Arrays.setAll(all, j -> random.nextInt(a.length));
            resampled[i] = first(centredA, centredB, centredAb, all);
        }
        Percentile percentile = new Percentile();
        percentile.setData(resampled);
        return new VarianceShare(
                first,
                percentile.evaluate(100 * (1 - Chance.CONFIDENCE) / 2),
                percentile.evaluate(100 * (1 + Chance.CONFIDENCE) / 2),
                total(centredA, centredB, centredAb));
    }

    private static double first(double[] a, double[] b, double[] ab, int[] rows) {
        double product = 0;
        double sum = 0;
        double squares = 0;
        for (int row : rows) {
            product += b[row] * (ab[row] - a[row]);
            sum += a[row] + b[row];
            squares += a[row] * a[row] + b[row] * b[row];
        }
        int count = 2 * rows.length;
        double variance = squares / count - (sum / count) * (sum / count);
        return product / rows.length / variance;
    }

    private static double total(double[] a, double[] b, double[] ab) {
        double squares = 0;
        double variance = 0;
        for (int i = 0; i < a.length; i++) {
            squares += (a[i] - ab[i]) * (a[i] - ab[i]);
            variance += a[i] * a[i] + b[i] * b[i];
        }
        return squares / variance;
    }
}

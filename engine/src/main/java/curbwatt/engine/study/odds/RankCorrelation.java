package curbwatt.engine.study.odds;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.apache.commons.math3.util.FastMath;

/**
 * Spearman's rank correlation of an input with an outcome: 1: the outcome rises whenever the input does; −1: it falls; 0:
 * no tendency.
 *
 * @param rhoRatio the correlation, −1 … 1
 * @param lowRatio lower bound with 95 % confidence
 * @param highRatio upper bound with 95 % confidence
 */
public record RankCorrelation(double rhoRatio, double lowRatio, double highRatio) {

    /** Correlation so close to ±1 that its transform would be infinite. */
    private static final double CLOSEST = 1 - 1e-12;

    /**
     * The correlation of two columns of figures, ties at their mean rank. Bounds by Fisher's transform with the standard
     * error of Bonett and Wright, √((1 + ρ²/2) / (n − 3)) (Psychometrika 65, 2000).
     *
     * @throws IllegalArgumentException if one of them is the same throughout
     */
    public static RankCorrelation of(double[] input, double[] outcome) {
        double rho = new SpearmansCorrelation().correlation(input, outcome);
        if (Double.isNaN(rho)) {
            throw new IllegalArgumentException("a column that is the same throughout has no rank correlation");
        }
        return of(rho, input.length);
    }

    /** The bounds of a correlation that was found in so many pairs. */
    static RankCorrelation of(double rho, int pairs) {
        double z = FastMath.atanh(Math.max(-CLOSEST, Math.min(CLOSEST, rho)));
        double quantile = new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + Chance.CONFIDENCE) / 2);
        double reach = quantile * Math.sqrt((1 + rho * rho / 2) / (pairs - 3));
        return new RankCorrelation(rho, Math.tanh(z - reach), Math.tanh(z + reach));
    }
}

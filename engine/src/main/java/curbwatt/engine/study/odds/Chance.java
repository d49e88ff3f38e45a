package curbwatt.engine.study.odds;

import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * How often something happened in the draws, and between which bounds its chance lies with 95 % confidence. The bounds
 * speak of the number of draws alone; what the spreads leave out they do not know.
 *
 * @param hits in how many draws it happened
 * @param draws number of draws
 * @param lowFraction lower bound of the chance
 * @param highFraction upper bound of the chance
 * @param method how the bounds were found
 */
public record Chance(int hits, int draws, double lowFraction, double highFraction, Method method) {

    /** How the bounds were found. */
    public enum Method {
        /**
         * Wilson's score interval for independent draws (Wilson 1927). For a Sobol sequence it takes no advantage of the
         * evenness.
         */
        WILSON,
        /** Student's interval from the means of the replicates of a Sobol sequence. */
        REPLICATES
    }

    /** Confidence of the bounds. */
    public static final double CONFIDENCE = 0.95;

    /** The share of the draws in which it happened. */
    public double fraction() {
        return (double) hits / draws;
    }

    /** From draws that are independent of each other. */
    public static Chance ofIndependent(int hits, int draws) {
        ConfidenceInterval interval = new WilsonScoreInterval().createInterval(draws, hits, CONFIDENCE);
        double low = hits == 0 ? 0 : interval.getLowerBound();
        double high = hits == draws ? 1 : interval.getUpperBound();
        return new Chance(hits, draws, Math.max(0, low), Math.min(1, high), Method.WILSON);
    }

    /**
     * From a Sobol sequence. Where a replicate has only one of the two outcomes its mean says too little of how far off
     * it may be, and the draws are taken as independent instead.
     *
     * @param happened draw by draw, replicate after replicate
     */
    public static Chance ofReplicates(List<Boolean> happened) {
        int size = happened.size() / UnitPoints.REPLICATES;
        double[] means = new double[UnitPoints.REPLICATES];
        int hits = 0;
        boolean mixed = true;
        for (int replicate = 0; replicate < means.length; replicate++) {
            int there = (int) happened.subList(replicate * size, (replicate + 1) * size).stream()
                    .filter(hit -> hit)
                    .count();
            mixed &= there > 0 && there < size;
            hits += there;
            means[replicate] = (double) there / size;
        }
        if (!mixed) {
            return ofIndependent(hits, happened.size());
        }
        double quantile = new TDistribution(null, means.length - 1).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
        double reach = quantile * Math.sqrt(StatUtils.variance(means) / means.length);
        double mean = StatUtils.mean(means);
        return new Chance(
                hits, happened.size(), Math.max(0, mean - reach), Math.min(1, mean + reach), Method.REPLICATES);
    }
}

package curbwatt.engine.simulation.clock;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntToDoubleFunction;

/**
 * How flashes lie in a stretch of time: segments between two instants at which something changes, and the state that holds in
 * each. Nobody changes its arrays.
 */
public final class FlashLayout {

    private static final double NS_PER_S = 1e9;

    /** End of each segment (ns); the last may lie past the end of the time laid out. */
    public final long[] endNs;
    /** The same (s). */
    public final double[] endS;
    /** Place of the state that holds in each segment. */
    public final int[] places;
    /** The states, by place, each as one number. */
    public final long[] codes;

    private final Map<Double, double[]> kept = new ConcurrentHashMap<>();

    public FlashLayout(long[] endNs, int[] places, long[] codes) {
        this.endNs = endNs;
        this.places = places;
        this.codes = codes;
        endS = new double[endNs.length];
        for (int s = 0; s < endS.length; s++) {
            endS[s] = endNs[s] / NS_PER_S;
        }
    }

    /**
     * What a first-order filter keeps of its output over each segment: an exponential, remembered since all runs of a study ask for
     * the same ones.
     *
     * @param timeConstantS time constant of the filter (s)
     * @param lengthS length of a segment (s)
     */
    public double[] keeps(double timeConstantS, IntToDoubleFunction lengthS) {
        return kept.computeIfAbsent(timeConstantS, absent -> {
            double[] keeps = new double[places.length];
            for (int s = 0; s < keeps.length; s++) {
                keeps[s] = Math.exp(-lengthS.applyAsDouble(s) / timeConstantS);
            }
            return keeps;
        });
    }
}

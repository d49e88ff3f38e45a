package curbwatt.engine.load;

import java.util.Arrays;

/**
 * Edges of a random duty, each computed from its index alone.
 *
 * <p>Time is cut into blocks of {@link #CYCLES} cycles' mean length. Each block holds exactly that many on-times of
 * fixed length; the rest of the block is free time, and equally likely instants of it, sorted, part it into the gaps.
 * That is a Poisson process told how often it strikes in a block: within a block gaps are close to exponential, and
 * the on-share of every block is exact, so that two seeds differ in where the on-times fall and never in how much is
 * drawn.
 */
final class RandomEdges {

    /** On-times in a block. */
    static final int CYCLES = 16;

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1.0p-53;

    private RandomEdges() {}

    /**
     * Time of an edge (ns).
     *
     * @param index even: a switch-on, odd: the switch-off that follows it
     */
    static long atNs(long seed, long onNs, long everyNs, long index) {
        long cycle = index / 2;
        long block = cycle / CYCLES;
        int place = (int) (cycle % CYCLES);
        // One nanosecond of each gap is kept back, so that no two edges ever coincide.
        long freeNs = CYCLES * (everyNs - onNs - 1);
        double[] instants = new double[CYCLES];
        for (int i = 0; i < CYCLES; i++) {
            instants[i] = uniform(seed, block * CYCLES + i);
        }
        Arrays.sort(instants);
        long onAtNs = block * CYCLES * everyNs + (long) (instants[place] * freeNs) + place * (onNs + 1);
        return index % 2 == 0 ? onAtNs : onAtNs + onNs;
    }

    /** A number from 0 to below 1, the same for the same seed and index on any machine: the SplitMix64 generator. */
    private static double uniform(long seed, long index) {
        long z = mix(seed) + (index + 1) * GOLDEN;
        return (mix(z) >>> 11) * UNIT;
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}

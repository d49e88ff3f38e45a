package curbwatt.engine.study.odds;

import curbwatt.engine.quantity.Require;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * How uncertain each input is, and how many draws are made.
 *
 * @param runs number of draws, 64 … 65536; for {@link Sampling#SOBOL} a power of two
 * @param seed what the random numbers begin with
 * @param sampling how the draws are spread
 * @param indices whether variance shares are asked for, which takes more runs
 * @param spreads how each input is spread; one that is left out is spread as usual
 */
public record OddsPlan(int runs, long seed, Sampling sampling, boolean indices, Map<Input, Spread> spreads) {

    /** Usual number of draws. */
    public static final int USUAL_RUNS = 1024;

    /** Least number of draws. */
    public static final int LEAST_RUNS = 64;

    /** Greatest number of draws. */
    public static final int MOST_RUNS = 65536;

    /** Refuses too few or too many draws, and for a Sobol sequence a number that is no power of two. */
    public OddsPlan {
        Objects.requireNonNull(sampling, "sampling");
        Require.inside("runs", runs, LEAST_RUNS, MOST_RUNS, "");
        if (sampling == Sampling.SOBOL && Integer.bitCount(runs) != 1) {
            int below = Integer.highestOneBit(runs);
            throw new IllegalArgumentException(
                    "runs is " + runs + "; a Sobol sequence is even only over a power of two," + " such as " + below
                            + " or " + 2 * below);
        }
        Map<Input, Spread> all = new EnumMap<>(Input.class);
        for (Input input : Input.values()) {
            all.put(input, spreads.getOrDefault(input, input.usual()));
        }
        spreads = Collections.unmodifiableMap(all);
    }

    /** The usual draws. */
    public static OddsPlan usual() {
        return new OddsPlan(USUAL_RUNS, 1, Sampling.SOBOL, false, Map.of());
    }

    /** The same plan with other draws. */
    public OddsPlan drawing(int otherRuns, long otherSeed, Sampling otherSampling, boolean otherIndices) {
        return new OddsPlan(otherRuns, otherSeed, otherSampling, otherIndices, spreads);
    }

    /** How an input is spread. */
    public Spread spread(Input input) {
        return spreads.get(input);
    }
}

package curbwatt.engine.study.size;

import curbwatt.engine.quantity.Require;

/**
 * How far the real conditions may lie from the stated ones: standard deviations of normal laws, independent of each
 * other.
 *
 * @param temperatureK of the temperature (K), 0 … 20
 * @param capacityFraction of the capacity, as a share of that of the new battery, 0 … 0.3
 * @param loadFraction of the load currents, as a share, 0 … 0.3
 */
public record Spread(double temperatureK, double capacityFraction, double loadFraction) {

    /** Refuses figures out of range. */
    public Spread {
        Require.inside("temperatureK", temperatureK, 0, 20, "K");
        Require.inside("capacityFraction", capacityFraction, 0, 0.3, "");
        Require.inside("loadFraction", loadFraction, 0, 0.3, "");
    }

    /** 3 K, 5 % and 5 %: our judgement, no published source. */
    public static Spread usual() {
        return new Spread(3, 0.05, 0.05);
    }
}

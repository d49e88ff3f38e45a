package curbwatt.engine.sizing;

import curbwatt.engine.quantity.Require;

/**
 * Size by days of autonomy, the IEEE 1013 way: the largest of what the depth of discharge over all days, the daily depth
 * and the capacity at the end of life ask for, with a margin.
 *
 * @param dailyAh charge drawn in a day (Ah), above 0
 * @param autonomyDays days without charging, above 0
 * @param deepestFraction depth of discharge allowed over them, above 0 … 1
 * @param dailyFraction depth of discharge allowed in a day, above 0 … 1
 * @param endOfLifeFraction capacity at which the battery is replaced, over that of the new one, above 0 … 1
 * @param marginFactor design margin, 1 … 3
 */
public record AutonomySizing(
        double dailyAh,
        double autonomyDays,
        double deepestFraction,
        double dailyFraction,
        double endOfLifeFraction,
        double marginFactor) {

    private static final double LEAST_FRACTION = 0.01;

    /** Refuses figures out of range. */
    public AutonomySizing {
        Require.positive("dailyAh", dailyAh, "Ah");
        Require.positive("autonomyDays", autonomyDays, "d");
        Require.inside("deepestFraction", deepestFraction, LEAST_FRACTION, 1, "");
        Require.inside("dailyFraction", dailyFraction, LEAST_FRACTION, 1, "");
        Require.inside("endOfLifeFraction", endOfLifeFraction, LEAST_FRACTION, 1, "");
        Require.inside("marginFactor", marginFactor, 1, 3, "");
    }

    /** Charge drawn over all days (Ah). */
    public double unadjustedAh() {
        return dailyAh * autonomyDays;
    }

    /** Capacity for the depth over all days (Ah). */
    public double forAutonomyAh() {
        return unadjustedAh() / deepestFraction;
    }

    /** Capacity for the depth of a day (Ah). */
    public double forDayAh() {
        return dailyAh / dailyFraction;
    }

    /** Capacity for the end of life (Ah). */
    public double forEndOfLifeAh() {
        return unadjustedAh() / endOfLifeFraction;
    }

    /** The size, margin included (Ah). */
    public double capacityAh() {
        return marginFactor * Math.max(forAutonomyAh(), Math.max(forDayAh(), forEndOfLifeAh()));
    }

    /**
     * Hours at which the capacity is to be read from a maker's table (h).
     *
     * @param largestA largest current that lasts (A), above 0
     */
    public double functionalRateH(double largestA) {
        return capacityAh() / Require.positive("largestA", largestA, "A");
    }
}

package curbwatt.engine.protection;

import curbwatt.engine.quantity.Require;

/**
 * One limit: passed when a reading has been beyond the trip level for a delay without a break, released when it has
 * been at or
 * back beyond the release level for another.
 *
 * @param trip level beyond which the limit is passed; above it or below it, as its {@link Reason} says
 * @param release level at which it lets go again: on the safe side of {@code trip}, or equal to it
 * @param unit unit of both: V, A or °C
 * @param tripDelayS unbroken time beyond {@code trip}, s, 0 to 3600
 * @param releaseDelayS unbroken time back at {@code release}, s, 0 to 86400
 */
public record Limit(double trip, double release, String unit, double tripDelayS, double releaseDelayS) {
    private static final double HIGHEST_V = 40;
    /** Highest level of a current, A. */
    static final double HIGHEST_A = 2000;

    private static final double COLDEST_C = -60;
    private static final double HOTTEST_C = 100;

    /** Refuses delays below 0 and a unit that nothing here is measured in. */
    public Limit {
        switch (unit) {
            case "V" -> within(trip, release, 0, HIGHEST_V, unit);
            case "A" -> within(trip, release, 0, HIGHEST_A, unit);
            case "°C" -> within(trip, release, COLDEST_C, HOTTEST_C, unit);
            default -> throw new IllegalArgumentException("unit is " + unit + ", allowed is V, A or °C");
        }
        Require.inside("tripDelayS", tripDelayS, 0, 3600, "s");
        Require.inside("releaseDelayS", releaseDelayS, 0, 86400, "s");
    }

    /** Returns a limit on the pack's voltage. */
    public static Limit volts(double tripV, double releaseV, double tripDelayS, double releaseDelayS) {
        return new Limit(tripV, releaseV, "V", tripDelayS, releaseDelayS);
    }

    /**
     * Returns a limit on a current.
     *
     * @param tripA current above which it is passed, A
     * @param tripDelayS unbroken time above it, s
     * @param retryS time after which it lets go: an open switch carries no current, so that the reading is back at
     *     once, s
     */
    public static Limit amperes(double tripA, double tripDelayS, double retryS) {
        return new Limit(tripA, tripA, "A", tripDelayS, retryS);
    }

    /** Returns a limit on the temperature of the cells, which is slow enough to need no delay. */
    public static Limit celsius(double tripC, double releaseC) {
        return new Limit(tripC, releaseC, "°C", 0, 0);
    }

    private static void within(double trip, double release, double least, double most, String unit) {
        Require.inside("trip", trip, least, most, unit);
        Require.inside("release", release, least, most, unit);
    }
}

package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * A fuse in its place, and how it warms towards opening.
 *
 * <p>Its heat is 0 when cold and 1 when it opens. Above the (derated) rating, heat grows at 1/t(I), t the typical time
 * to open: a
 * constant current opens it in just that time, a changing one when ∫ dt/t(I) reaches 1. Up to the rating the heat dies
 * away with a
 * time constant of a minute (common practice, no published source), so that short peaks of a flashing load do not add
 * up for hours.
 *
 * @param rating what is printed on it
 * @param ambientC air round it, °C, −40 to 125
 */
public record InstalledFuse(FuseRating rating, double ambientC) {
    private static final double COOLING_S = 60;
    private static final double COLDEST_C = -40;
    private static final double[] AMBIENT_C = {20, 65, 85, 110, 125};
    private static final double[] SHARE = {1.00, 0.85, 0.75, 0.625, 0.55};

    /** Refuses impossible values. */
    public InstalledFuse {
        Objects.requireNonNull(rating, "rating");
        Require.inside("ambientC", ambientC, COLDEST_C, AMBIENT_C[AMBIENT_C.length - 1], "°C");
    }

    /**
     * Returns the share of the rating that a fuse has left in warm air: 1 up to 20 °C, then straight lines through
     * 0.85 at 65, 0.75 at
     * 85, 0.625 at 110 and 0.55 at 125 °C. A data sheet's table for a 40 A maxi fuse; taken for the others too.
     *
     * @param ambientC air round it, °C
     */
    public static double ambientShare(double ambientC) {
        Require.inside("ambientC", ambientC, COLDEST_C, AMBIENT_C[AMBIENT_C.length - 1], "°C");
        if (ambientC <= AMBIENT_C[0]) {
            return SHARE[0];
        }
        int i = 1;
        while (ambientC > AMBIENT_C[i]) {
            i++;
        }
        double along = (ambientC - AMBIENT_C[i - 1]) / (AMBIENT_C[i] - AMBIENT_C[i - 1]);
        return SHARE[i - 1] + along * (SHARE[i] - SHARE[i - 1]);
    }

    /** Returns the rating left in this air, A. */
    public double effectiveA() {
        return rating.ratedA() * ambientShare(ambientC);
    }

    /** Returns the time before which it does not open when cold, s. */
    public double earliestS(double currentA) {
        return rating.type().earliestS(currentA / effectiveA());
    }

    /** Returns the time by which it has opened when cold, s. */
    public double latestS(double currentA) {
        return rating.type().latestS(currentA / effectiveA());
    }

    /**
     * Returns the time until it opens under a constant current, s; infinity up to the rating.
     *
     * @param heatFraction its heat now, 0 to 1
     * @param currentA current, A; its sign does not matter
     */
    public double opensInS(double heatFraction, double currentA) {
        double typicalS = rating.type().typicalS(Math.abs(currentA) / effectiveA());
        return typicalS == Double.POSITIVE_INFINITY ? typicalS : Math.max(1 - heatFraction, 0) * typicalS;
    }

    /**
     * Returns how fast a current warms it, 1/s; 0 up to the rating.
     *
     * @param currentA current, A; its sign does not matter
     */
    public double warmsPerS(double currentA) {
        return 1 / rating.type().typicalS(Math.abs(currentA) / effectiveA());
    }

    /**
     * Returns the heat after a constant current, 0 or above; at 1 and above it has opened.
     *
     * @param heatFraction its heat before
     * @param currentA current, A; its sign does not matter
     * @param durationS how long, s
     */
    public double heatAfter(double heatFraction, double currentA, double durationS) {
        return heatAfterWarming(heatFraction, warmsPerS(currentA), durationS);
    }

    /**
     * Returns the heat after a time in which a current has warmed it so fast, 0 or above.
     *
     * @param heatFraction its heat before
     * @param warmsPerS what {@link #warmsPerS} says of the current, 1/s
     * @param durationS how long, s
     */
    public static double heatAfterWarming(double heatFraction, double warmsPerS, double durationS) {
        return warmsPerS == 0 ? heatFraction * Math.exp(-durationS / COOLING_S) : heatFraction + durationS * warmsPerS;
    }
}

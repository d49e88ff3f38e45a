package curbwatt.engine.load;

import curbwatt.engine.quantity.Require;

/**
 * What a load draws more just after it is switched on: a multiple of its current for a time, then its current.
 *
 * <p>A real surge dies away; one that dies away exponentially with time constant τ from the same multiple carries the
 * same extra ampere-seconds as this rectangle of length τ. The rectangle has two edges and no slope, so that steps stay
 * long. It begins anew with every on-time of the pattern; whether a filament that flashes cools down far enough in
 * between for that is for the user to say.
 *
 * @param multipleFactor current during the surge as a multiple of the current after it, 1 … 20; 1: none
 * @param durationS length of the surge (s), 0 … 10
 */
public record Inrush(double multipleFactor, double durationS) {

    /** Refuses figures out of range. */
    public Inrush {
        Require.inside("inrushMultiple", multipleFactor, 1, 20, "");
        Require.inside("inrushS", durationS, 0, 10, "s");
    }

    /** No surge. */
    public static Inrush none() {
        return new Inrush(1, 0);
    }

    /** A cold filament: ten times for 50 ms; common practice, no published source. */
    public static Inrush coldFilament() {
        return new Inrush(10, 0.05);
    }

    /** A small motor from rest: five times for 0.2 s; common practice, no published source. */
    public static Inrush smallMotor() {
        return new Inrush(5, 0.2);
    }

    /** Whether there is a surge at all. */
    public boolean isPossible() {
        return multipleFactor > 1 && durationS > 0;
    }

    /** Multiple that holds at a time since the load was switched on (s). */
    public double atFactor(double sinceOnS) {
        return sinceOnS < durationS ? multipleFactor : 1;
    }

    /**
     * Mean current over a pattern, as a multiple of what it would be without surges, where on-times are all equal or
     * all longer than the surge.
     *
     * @param onFraction share of time on
     * @param onsetsPerS how often it is switched on in a second
     */
    double meanFactor(double onFraction, double onsetsPerS) {
        double surgeFraction = Math.min(onFraction, onsetsPerS * durationS);
        return onFraction == 0 ? 1 : 1 + (multipleFactor - 1) * surgeFraction / onFraction;
    }
}

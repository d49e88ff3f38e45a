package curbwatt.engine.alternator;

import curbwatt.engine.quantity.Require;

/**
 * Share of the cold output that is left at running temperature: straight between a low and a high shaft speed, constant
 * outside them.
 *
 * <p>The usual pair, 0.667 at 1300 /min and 0.82 at 2500 /min, is the only clean one found: hot 16/24 A and 41/50 A in
 * a
 * maker's public manual for a marine engine. A single percentage for every machine is not supported by public data, so
 * it
 * is an input.
 *
 * <p>The pair holds at running temperature, {@link #HOT_C} under the hood; {@link #under} gives the pair at another
 * temperature.
 *
 * @param lowFraction share left at and below {@link #LOW_RPM}, 0 … 1.1
 * @param highFraction share left at and above {@link #HIGH_RPM}, 0 … 1.1
 */
public record HotFactor(double lowFraction, double highFraction) {

    /** Shaft speed of the low share (1/min). */
    public static final double LOW_RPM = 1300;

    /** Shaft speed of the high share (1/min). */
    public static final double HIGH_RPM = 2500;

    /**
     * Air under the hood at which the pair holds (°C): 200 °F, the hot end of a public laboratory's vehicle simulation
     * and the temperature of the federal ambulance specification.
     */
    public static final double HOT_C = 93;

    /** Air under the hood at which the whole cold output is there (°C): the temperature of bench tables and labels. */
    public static final double COLD_C = 25;

    /** Refuses shares out of range. */
    public HotFactor {
        Require.inside("hotFractionLow", lowFraction, 0, 1.1, "");
        Require.inside("hotFractionHigh", highFraction, 0, 1.1, "");
    }

    /** The published pair. */
    public static HotFactor published() {
        return new HotFactor(16.0 / 24, 41.0 / 50);
    }

    /**
     * The pair with this air under the hood (°C): straight from 1 at {@link #COLD_C} through this pair at {@link
     * #HOT_C} and on, but never more than 1 below it, and never rising above it. Cold air is given no more than the
     * label, which errs on the safe side.
     */
    public HotFactor under(double underHoodC) {
        double cool = Math.min(1, (HOT_C - underHoodC) / (HOT_C - COLD_C));
        return new HotFactor(cooled(lowFraction, cool), cooled(highFraction, cool));
    }

    private static double cooled(double hotFraction, double cool) {
        double share = hotFraction > 1 ? Math.max(0, cool) : cool;
        return Math.max(0, hotFraction + share * (1 - hotFraction));
    }

    /** Share of the cold output left at a shaft speed. */
    public double at(double shaftRpm) {
        double share = Math.min(1, Math.max(0, (shaftRpm - LOW_RPM) / (HIGH_RPM - LOW_RPM)));
        return lowFraction + share * (highFraction - lowFraction);
    }
}

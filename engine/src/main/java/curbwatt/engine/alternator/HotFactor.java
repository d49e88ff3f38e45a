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
 * @param lowFraction share left at and below {@link #LOW_RPM}, 0.3 … 1.1
 * @param highFraction share left at and above {@link #HIGH_RPM}, 0.3 … 1.1
 */
public record HotFactor(double lowFraction, double highFraction) {

    /** Shaft speed of the low share (1/min). */
    public static final double LOW_RPM = 1300;

    /** Shaft speed of the high share (1/min). */
    public static final double HIGH_RPM = 2500;

    /** Refuses shares out of range. */
    public HotFactor {
        Require.inside("hotFractionLow", lowFraction, 0.3, 1.1, "");
        Require.inside("hotFractionHigh", highFraction, 0.3, 1.1, "");
    }

    /** The published pair. */
    public static HotFactor published() {
        return new HotFactor(16.0 / 24, 41.0 / 50);
    }

    /** Share of the cold output left at a shaft speed. */
    public double at(double shaftRpm) {
        double share = Math.min(1, Math.max(0, (shaftRpm - LOW_RPM) / (HIGH_RPM - LOW_RPM)));
        return lowFraction + share * (highFraction - lowFraction);
    }
}

package curbwatt.engine.load;

import curbwatt.engine.quantity.Require;

/**
 * The voltage at which a load falls silent, and when it comes back: a radio that goes quiet before the cutoff acts is a
 * finding.
 *
 * <p>Out once its own voltage is below {@code levelV}; back once that voltage has stayed at or above {@code returnV}
 * for
 * {@code returnDelayS} without a break. The hysteresis and the delay stand for the restart that such equipment needs,
 * and
 * keep a load from chattering on its own sag.
 *
 * @param levelV drop-out voltage at the load (V), 0 … 14; 0 means that it never drops out
 * @param returnV voltage of return (V), not below the level, up to 16
 * @param returnDelayS time above the return voltage before the load draws again (s), 0 … 600; a run takes less than
 *     0.1 s for 0.1 s
 */
public record DropOut(double levelV, double returnV, double returnDelayS) {

    /** Rise above the drop-out level before return, where nothing is stated (V); common practice, no source. */
    public static final double USUAL_HYSTERESIS_V = 0.5;

    /** Wait before return, where nothing is stated (s); common practice, no source. */
    public static final double USUAL_RETURN_DELAY_S = 5;

    /** Refuses a return voltage below the level, or figures out of range. */
    public DropOut {
        Require.inside("dropOutV", levelV, 0, 14, "V");
        Require.inside("returnV", returnV, levelV, 16, "V");
        Require.inside("returnDelayS", returnDelayS, 0, 600, "s");
    }

    /** Never drops out. */
    public static DropOut never() {
        return new DropOut(0, 0, 0);
    }

    /** Drops out at a level and returns with the usual hysteresis and delay. */
    public static DropOut at(double levelV) {
        return new DropOut(levelV, levelV + USUAL_HYSTERESIS_V, USUAL_RETURN_DELAY_S);
    }

    /** Whether the load can drop out at all. */
    public boolean isPossible() {
        return levelV > 0;
    }
}

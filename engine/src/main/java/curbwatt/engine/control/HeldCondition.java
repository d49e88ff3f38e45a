package curbwatt.engine.control;

/**
 * Since when a condition has held without a break.
 *
 * @param fromS time from which it has held (s); positive infinity: it does not hold
 */
public record HeldCondition(double fromS) {

    /** Times within this are one instant (s): the rounding of a time added up over a year lies well below. */
    static final double INSTANT_S = 1e-6;

    /** Does not hold. */
    public static HeldCondition not() {
        return new HeldCondition(Double.POSITIVE_INFINITY);
    }

    /** What follows when the condition holds, or does not, at a time (s). */
    public HeldCondition next(double timeS, boolean holds) {
        if (!holds) {
            return not();
        }
        return fromS <= timeS ? this : new HeldCondition(timeS);
    }

    /** When it will have held for a delay, if it goes on holding; positive infinity: it does not hold (s). */
    public double overS(double delayS) {
        return fromS + delayS;
    }
}

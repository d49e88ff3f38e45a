package curbwatt.engine.sizing;

import curbwatt.engine.quantity.Require;

/**
 * A stretch of a duty cycle at one current.
 *
 * @param currentA current of all loads (A), 0 or more
 * @param durationS length (s), above 0
 */
public record DutyPeriod(double currentA, double durationS) {

    /** Refuses a negative current and no length. */
    public DutyPeriod {
        Require.inside("currentA", currentA, 0, Double.MAX_VALUE, "A");
        Require.positive("durationS", durationS, "s");
    }

    /** Charge drawn (Ah). */
    public double chargeAh() {
        return currentA * durationS / 3600;
    }
}

package curbwatt.engine.alternator;

import curbwatt.engine.quantity.Require;

/**
 * The two figures on the machine: output at a low and at a high shaft speed, cold, at 13.5 V, as ISO 8854 and SAE J56
 * label
 * it. The customary speeds are 1500 and 6000 /min (from memory; the printed page was not seen whole).
 *
 * @param idleA output at the low speed (A), above 0
 * @param idleRpm the low shaft speed (1/min), 500 … 4000
 * @param ratedA output at the high speed (A), above {@code idleA}
 * @param ratedRpm the high shaft speed (1/min), above {@code idleRpm}
 */
public record AlternatorLabel(double idleA, double idleRpm, double ratedA, double ratedRpm) {

    /** Low shaft speed of the label (1/min). */
    public static final double IDLE_RPM = 1500;

    /** High shaft speed of the label (1/min). */
    public static final double RATED_RPM = 6000;

    /** Refuses a label whose output does not grow with speed. */
    public AlternatorLabel {
        Require.inside("ratedA", ratedA, 1, 1000, "A");
        Require.inside("idleRpm", idleRpm, 500, 4000, "/min");
        Require.inside("ratedRpm", ratedRpm, idleRpm + 1, 20000, "/min");
        Require.inside("idleA", idleA, 0.1, 1000, "A");
        if (idleA >= ratedA) {
            throw new IllegalArgumentException("idleA is " + idleA + " A; it must lie below ratedA, " + ratedA + " A");
        }
    }

    /** A label at the customary speeds. */
    public static AlternatorLabel of(double idleA, double ratedA) {
        return new AlternatorLabel(idleA, IDLE_RPM, ratedA, RATED_RPM);
    }
}

package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;

/**
 * What a circuit draws.
 *
 * @param continuousA current that flows for long; of a flashing load its mean or, to be careful, its root mean square,
 *     A
 * @param peakA largest current, A, at least the continuous one
 * @param peakS longest time that it lasts in one piece, s
 */
public record CircuitCurrent(double continuousA, double peakA, double peakS) {
    /** Refuses impossible values. */
    public CircuitCurrent {
        Require.inside("continuousA", continuousA, 0, 2000, "A");
        Require.inside("peakA", peakA, continuousA, 5000, "A");
        Require.inside("peakS", peakS, 0, 86400, "s");
    }

    /** Returns a current without peaks. */
    public static CircuitCurrent steady(double continuousA) {
        return new CircuitCurrent(continuousA, continuousA, 0);
    }
}

package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;

/**
 * What a circuit draws.
 *
 * @param meanA mean current, by which a long drop is judged, A
 * @param heatingA root mean square, at least the mean: what warms wire and fuse, A
 * @param peakA largest current, A, at least the root mean square
 * @param peakS longest time that it lasts in one piece, s
 */
public record CircuitCurrent(double meanA, double heatingA, double peakA, double peakS) {
    /** Refuses impossible values. */
    public CircuitCurrent {
        Require.inside("meanA", meanA, 0, 2000, "A");
        Require.inside("heatingA", heatingA, meanA, 2000, "A");
        Require.inside("peakA", peakA, heatingA, 5000, "A");
        Require.inside("peakS", peakS, 0, 86400, "s");
    }

    /** Returns a current without peaks. */
    public static CircuitCurrent steady(double currentA) {
        return new CircuitCurrent(currentA, currentA, currentA, 0);
    }
}

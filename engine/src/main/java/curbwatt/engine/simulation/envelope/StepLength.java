package curbwatt.engine.simulation.envelope;

/**
 * How long the next long step is tried.
 *
 * <p>What a parabola is off by grows with the third power of a step's length, and less and less of it comes as batteries settle
 * after a change: the share of it that one step keeps of the one before is taken to be that which the next will keep.
 */
final class StepLength {

    private static final double SHRINKS_AT_MOST = 0.2;
    private static final double SHRINKS_AT_LEAST = 0.7;
    private static final double GROWS_AT_MOST = 3;
    private static final double SAFETY = 0.6;
    private static final double LEAST_USED = 1e-6;
    private static final double LEAST_KEPT = 0.2;

    private double proposedS = 1;
    /** What the last step was off by, for its length to the third power; 0: there is none to go on from. */
    private double lastBend;

    /** Begins anew with a length (s). */
    void begin(double firstS) {
        proposedS = firstS;
        lastBend = 0;
    }

    /** Lets the next step begin with no more than a length (s). */
    void propose(double atMostS) {
        proposedS = Math.min(proposedS, atMostS);
    }

    /** Length to try first (s). */
    double proposedS() {
        return proposedS;
    }

    /**
     * Takes note of a step that was good.
     *
     * @param used share of the tolerance that it used
     * @param tolerance the tolerance, as a multiple of the usual one
     */
    void accept(double lengthS, double used, double tolerance) {
        double bend = tolerance * Math.max(used, LEAST_USED) / (lengthS * lengthS * lengthS);
        if (lengthS >= proposedS || used > SAFETY) {
            double kept = lastBend > 0 ? Math.max(LEAST_KEPT, Math.min(1, bend / lastBend)) : 1;
            double grows = SAFETY / Math.cbrt(Math.max(used, LEAST_USED) * kept);
            proposedS = lengthS * Math.min(GROWS_AT_MOST, grows);
        }
        lastBend = bend;
    }

    /** Length to try after one that was too long (s). */
    double shorter(double lengthS, double used) {
        double shrinks = Math.min(SHRINKS_AT_LEAST, SAFETY / Math.cbrt(used));
        proposedS = lengthS * Math.max(SHRINKS_AT_MOST, shrinks);
        return proposedS;
    }
}

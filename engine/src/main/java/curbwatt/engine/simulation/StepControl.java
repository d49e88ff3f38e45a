package curbwatt.engine.simulation;

/**
 * How long a step may be.
 *
 * <p>A step is taken with the mean of the currents at its ends, an error of the third order. It is halved until the
 * voltage
 * changes by no more than {@code voltageChangeV} and half the current's change moves no more than {@code
 * chargeFraction} of
 * the capacity, and grows again while both stay well below. Flash edges cut steps far shorter than either would.
 */
record StepControl(double voltageChangeV, double chargeFraction, double longestS) {

    /** Shortest step that is still halved (s). */
    static final double SHORTEST_S = 1e-3;

    private static final double GROWTH = 1.6;
    private static final double SECONDS_PER_HOUR = 3600;

    /** What every run uses; halving all three moves trip times by less than a tenth of a second. */
    static StepControl usual() {
        return new StepControl(2e-3, 2e-6, 30);
    }

    /** Share of what is allowed that a trial step used; above 1: too long. */
    double used(double lengthS, NodePoint start, NodePoint end, double capacityAh) {
        double voltageShare = Math.abs(end.nodeV - start.nodeV) / voltageChangeV;
        double movedAh = 0.5 * Math.abs(end.mainA - start.mainA) * lengthS / SECONDS_PER_HOUR;
        return Math.max(voltageShare, Math.sqrt(movedAh / (chargeFraction * capacityAh)));
    }

    /** Length to try after a step that used a share of what is allowed (s). */
    double next(double lengthS, double used) {
        double factor = used < 0.4 ? GROWTH : Math.min(GROWTH, 0.8 / used);
        return Math.min(longestS, Math.max(SHORTEST_S, lengthS * factor));
    }
}

package curbwatt.engine.simulation;

import curbwatt.engine.quantity.Require;
import curbwatt.engine.simulation.part.NodePoint;

/**
 * How long a step may be.
 *
 * <p>A step is taken with the mean of the currents at its ends, an error of the third order. It is halved until the
 * voltage changes by no more than {@code voltageChangeV}, or by some times as much along a straight line, and half the
 * current's change moves no more than {@code chargeFraction} of the capacity; it grows again while both stay well below.
 * Flash edges cut steps far shorter than either would.
 *
 * @param voltageChangeV most that a node's voltage may change in a step (V), 1e-5 … 0.1
 * @param chargeFraction most that half the current's change may move, as a share of the capacity, 1e-8 … 1e-3
 * @param longestS longest step (s), 1 … 7200
 */
public record StepControl(double voltageChangeV, double chargeFraction, double longestS) {

    /** Shortest step that is still halved (s). */
    static final double SHORTEST_S = 1e-3;

    /** Multiples of the usual change by which a voltage may change in a step in which it runs straight. */
    static final double MOST_CHANGES = 25;

    /** Share of what is allowed below which the next step may be as much longer as any. */
    static final double MAY_GROW = 0.4;

    private static final double GROWTH = 1.6;
    private static final double SECONDS_PER_HOUR = 3600;

    /** Refuses figures out of range. */
    public StepControl {
        Require.inside("voltageChangeV", voltageChangeV, 1e-5, 0.1, "V");
        Require.inside("chargeFraction", chargeFraction, 1e-8, 1e-3, "");
        Require.inside("longestS", longestS, 1, 7200, "s");
    }

    /** What a scene uses; halving all three moves trip times by less than a tenth of a second. */
    public static StepControl usual() {
        return new StepControl(2e-3, 2e-6, 30);
    }

    /** What days and months use: a parked night goes by in steps of up to half an hour. */
    public static StepControl forDays() {
        return new StepControl(5e-3, 1e-5, 1800);
    }

    /**
     * How far a voltage may lie off its parabola in a long step, or off a straight line in a short one in which it changes
     * by more than usual (V).
     */
    double bendV() {
        return 0.03 * voltageChangeV;
    }

    /** Share of what is allowed that a voltage's change in a step uses; above 1: too long, unless it runs straight. */
    double usedByChange(NodePoint start, NodePoint end) {
        return Math.abs(end.nodeV - start.nodeV) / voltageChangeV;
    }

    /** Share of what is allowed that half the current's change uses by what it moves; above 1: too long. */
    double usedByCharge(double lengthS, NodePoint start, NodePoint end, double capacityAh) {
        double movedAh = 0.5 * Math.abs(end.mainA - start.mainA) * lengthS / SECONDS_PER_HOUR;
        return Math.sqrt(movedAh / (chargeFraction * capacityAh));
    }

    /** Share of what is allowed that a voltage is off a straight line in the middle of a step; above 1: too long. */
    double usedByBend(NodePoint start, NodePoint middle, NodePoint end) {
        return Math.sqrt(Math.abs(middle.nodeV - 0.5 * (start.nodeV + end.nodeV)) / bendV());
    }

    /** Length to try after a step that used a share of what is allowed (s). */
    double next(double lengthS, double used) {
        double factor = used < MAY_GROW ? GROWTH : Math.min(GROWTH, 0.8 / used);
        return Math.min(longestS, Math.max(SHORTEST_S, lengthS * factor));
    }
}

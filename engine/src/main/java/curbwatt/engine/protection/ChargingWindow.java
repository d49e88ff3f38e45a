package curbwatt.engine.protection;

import curbwatt.engine.quantity.Require;

/**
 * What a pack asks of whatever charges it. The protection does not hold a charger to it; it switches off when its own
 * limits,
 * which lie further out, are passed.
 *
 * @param leastV charging voltage below which the pack is not filled, V, 12 to 16
 * @param mostV highest charging voltage, V, 12 to 16
 * @param mostA highest charging current, A, above 0
 */
public record ChargingWindow(double leastV, double mostV, double mostA) {
    /** Refuses an empty window. */
    public ChargingWindow {
        Require.inside("mostV", mostV, 12, 16, "V");
        Require.inside("leastV", leastV, 12, mostV, "V");
        Require.positive("mostA", mostA, "A");
    }

    /** Whether a charger's voltage and largest current lie inside. */
    public boolean admits(double chargingV, double currentA) {
        return chargingV >= leastV && chargingV <= mostV && currentA <= mostA;
    }
}

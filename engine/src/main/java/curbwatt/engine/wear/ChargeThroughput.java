package curbwatt.engine.wear;

import curbwatt.engine.quantity.Require;

/**
 * Charge that has gone through a battery.
 *
 * @param dischargedAh charge taken out (Ah), from 0
 * @param chargedAh charge put back (Ah), from 0
 */
public record ChargeThroughput(double dischargedAh, double chargedAh) {
    private static final double S_PER_H = 3600;

    /** Refuses negative charge. */
    public ChargeThroughput {
        Require.inside("dischargedAh", dischargedAh, 0, Double.MAX_VALUE, "Ah");
        Require.inside("chargedAh", chargedAh, 0, Double.MAX_VALUE, "Ah");
    }

    /** None yet. */
    public static ChargeThroughput none() {
        return new ChargeThroughput(0, 0);
    }

    /** With a stretch of constant battery current added; discharging counts positive. */
    public ChargeThroughput plus(double batteryA, double durationS) {
        double throughAh = batteryA * durationS / S_PER_H;
        return new ChargeThroughput(dischargedAh + Math.max(0, throughAh), chargedAh + Math.max(0, -throughAh));
    }

    /** Charge taken out in units of a capacity: how many full discharges it would make. */
    public double fullDischarges(double capacityAh) {
        return dischargedAh / Require.positive("capacityAh", capacityAh, "Ah");
    }
}

package curbwatt.engine.study.recharge;

import curbwatt.engine.quantity.Require;

/**
 * A day of equal scenes, each with a drive after it; the rest of the day the vehicle is parked.
 *
 * @param scenesPerDay how many scenes, 1 … 48
 * @param driveS drive after each (s), 60 … one day
 */
public record CallPattern(int scenesPerDay, double driveS) {

    /** Refuses figures out of range. */
    public CallPattern {
        Require.inside("scenesPerDay", scenesPerDay, 1, 48, "");
        Require.inside("driveS", driveS, 60, 86400, "s");
    }
}

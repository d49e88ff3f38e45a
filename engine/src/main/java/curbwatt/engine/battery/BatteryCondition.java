package curbwatt.engine.battery;

import curbwatt.engine.quantity.Require;

/**
 * What has become of a battery since it was new.
 *
 * @param capacityHealthFraction capacity over that of the new battery, 0.05 to 1.2 (above 1: better than its label).
 *     Multiplies capacity and total charge; the gassing current stays, the mode weights are dimensionless and stay
 * @param resistanceGrowthFactor resistance over that of the new battery, 0.5 to 20
 * @param selfDischargePerMonthFraction share of the capacity lost in a month of 730.5 h at 25 °C, 0 to 1
 */
public record BatteryCondition(
        double capacityHealthFraction, double resistanceGrowthFactor, double selfDischargePerMonthFraction) {
    /** Loss per month at 25 °C that is assumed where nothing is known: common practice for calcium grids. */
    public static final double USUAL_SELF_DISCHARGE_PER_MONTH_FRACTION = 0.03;

    /** Refuses impossible values. */
    public BatteryCondition {
        Require.inside("capacityHealthFraction", capacityHealthFraction, 0.05, 1.2, "");
        Require.inside("resistanceGrowthFactor", resistanceGrowthFactor, 0.5, 20, "");
        Require.inside("selfDischargePerMonthFraction", selfDischargePerMonthFraction, 0, 1, "");
    }

    /** Returns the condition of a new battery with the usual self-discharge. */
    public static BatteryCondition asNew() {
        return new BatteryCondition(1, 1, USUAL_SELF_DISCHARGE_PER_MONTH_FRACTION);
    }
}

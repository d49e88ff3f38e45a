package curbwatt.engine.study.settings;

import curbwatt.engine.quantity.Require;

/**
 * How far the vehicle on the road may lie from the one in the scenario: the sizes that room is measured in.
 *
 * @param sensorV error of the cutoff's reading, either way (V), 0.01 … 0.5
 * @param timerFraction error of its delay, either way, 0.01 … 0.5
 * @param capacityLossFraction capacity that the battery loses with age, 0.01 … 0.3
 * @param resistanceGrowthFraction by how much its resistance grows meanwhile, 0 … 2
 * @param airK how much colder or warmer it may be (K), 1 … 20
 * @param loadFraction how much more or less the loads may draw, 0.01 … 0.3
 */
public record Spread(
        double sensorV,
        double timerFraction,
        double capacityLossFraction,
        double resistanceGrowthFraction,
        double airK,
        double loadFraction) {

    /** Refuses sizes out of range. */
    public Spread {
        Require.inside("sensorSpreadV", sensorV, 0.01, 0.5, "V");
        Require.inside("timerSpreadFraction", timerFraction, 0.01, 0.5, "");
        Require.inside("capacityLossFraction", capacityLossFraction, 0.01, 0.3, "");
        Require.inside("resistanceGrowthFraction", resistanceGrowthFraction, 0, 2, "");
        Require.inside("airSpreadK", airK, 1, 20, "K");
        Require.inside("loadSpreadFraction", loadFraction, 0.01, 0.3, "");
    }

    /**
     * The usual sizes, common practice without a published source: 0.1 V of sensor error, 10 % of the delay, a battery
     * at
     * 80 % of its capacity with 25 % more resistance, 10 K, 10 % of the loads.
     */
    public static Spread usual() {
        return new Spread(0.1, 0.1, 0.2, 0.25, 10, 0.1);
    }
}

package curbwatt.engine.sizing;

import curbwatt.engine.quantity.Require;

/**
 * What an uncorrected size is multiplied by.
 *
 * @param temperatureFactor for the lowest temperature of the cells, 0.8 … 2; see {@link TemperatureCorrection}
 * @param marginFactor design margin for growth and poor upkeep, 1 … 3; 1.10 to 1.25 are usual
 * @param ageingFactor so that the worn battery still suffices, 1 … 20; 1.25 for replacement at 80 % of capacity
 */
public record SizingFactors(double temperatureFactor, double marginFactor, double ageingFactor) {

    /** Refuses factors out of range. */
    public SizingFactors {
        Require.inside("temperatureFactor", temperatureFactor, 0.8, 2, "");
        Require.inside("marginFactor", marginFactor, 1, 3, "");
        Require.inside("ageingFactor", ageingFactor, 1, 20, "");
    }

    /** The corrected size (Ah). */
    public double corrected(double uncorrectedAh) {
        return uncorrectedAh * temperatureFactor * marginFactor * ageingFactor;
    }
}

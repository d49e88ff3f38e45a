package curbwatt.engine.battery.label;

import curbwatt.engine.quantity.Require;

/**
 * The figures of a 12.8 V iron-phosphate pack. Reserve and cold cranking are not printed on one; what its protection
 * allows is {@code curbwatt.engine.protection}.
 *
 * @param ratedAh charge to 10.0 V at 25 °C at the rated life, Ah, 1 to 2000
 * @param ratedH life of the capacity test, h, 1 to 100. Makers rate over 20, 5 or 3 h; at a Peukert exponent of 1.05
 *     the
 *     difference between 20 and 5 h is 7 %
 * @param resistanceOhm resistance of the full pack with its protection at 25 °C, Ω, 1e-5 to 1. Some seconds' worth: the
 *     1 kHz figure that makers prefer is lower
 */
public record LfpLabel(double ratedAh, double ratedH, double resistanceOhm) {
    /** Refuses figures that no such pack has. */
    public LfpLabel {
        Require.inside("ratedAh", ratedAh, 1, 2000, "Ah");
        Require.inside("ratedH", ratedH, 1, 100, "h");
        Require.inside("resistanceOhm", resistanceOhm, 1e-5, 1, "Ohm");
    }

    /** Returns a label whose capacity is that of the 20 h test. */
    public static LfpLabel ofTwentyHours(double capacityAh, double resistanceOhm) {
        return new LfpLabel(capacityAh, LabelTest.TWENTY_HOURS_H, resistanceOhm);
    }
}

package curbwatt.engine.battery.label;

import curbwatt.engine.quantity.Require;

/**
 * Life under constant current: t = H (C/(I H))^n.
 *
 * <p>It holds for constant current from full alone. Applied to the on-current of a flashing load it is wrong; that is
 * what {@link curbwatt.engine.battery.DiffusionModes} is for.
 *
 * @param ratedAh C, charge delivered at the rated life, Ah
 * @param ratedH H, rated life, h
 * @param exponent n, dimensionless, 1 or above
 */
public record PeukertLaw(double ratedAh, double ratedH, double exponent) {
    /** Refuses impossible values. */
    public PeukertLaw {
        Require.positive("ratedAh", ratedAh, "Ah");
        Require.positive("ratedH", ratedH, "h");
        Require.inside("exponent", exponent, 1, 3, "");
    }

    /**
     * Returns the exponent that two discharges imply, n = ln(t2/t1)/ln(I1/I2).
     *
     * @param firstA current of the first, A
     * @param firstH life of the first, h
     * @param secondA current of the second, A, unlike that of the first
     * @param secondH life of the second, h
     */
    public static double exponentFrom(double firstA, double firstH, double secondA, double secondH) {
        Require.positive("firstA", firstA, "A");
        Require.positive("firstH", firstH, "h");
        Require.positive("secondA", secondA, "A");
        Require.positive("secondH", secondH, "h");
        return Require.finite("exponent", Math.log(secondH / firstH) / Math.log(firstA / secondA), "");
    }

    /** Returns the life at a current in A, h. */
    public double lifeH(double currentA) {
        return ratedH * Math.pow(ratedAh / (Require.positive("currentA", currentA, "A") * ratedH), exponent);
    }

    /** Returns the charge delivered at a current in A, Ah. */
    public double deliveredAh(double currentA) {
        return currentA * lifeH(currentA);
    }

    /** Returns the current whose life is {@code lifeH} hours, A. */
    public double currentA(double lifeH) {
        return ratedAh / ratedH * Math.pow(ratedH / Require.positive("lifeH", lifeH, "h"), 1 / exponent);
    }
}

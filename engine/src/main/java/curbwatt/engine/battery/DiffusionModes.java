package curbwatt.engine.battery;

import curbwatt.engine.quantity.Require;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Charge that is out of reach for now: a sum of relaxation modes driven by the current.
 *
 * <pre>
 *   dx_m/dt = w_m I − x_m/τ_m        (charging, I &lt; 0: γ w_m for w_m)
 * </pre>
 *
 * <p>The kinetic battery model (Manwell and McGowan, Solar Energy 50 (1993) 399) is the case of one mode with
 * w = (1 − c)/c and τ = 1/k', empty when the charge drawn and the bound charge add up to the capacity. The diffusion
 * model
 * (Rakhmatov and Vrudhula, 2001) is the case w = 2, τ = 1/(β²m²).
 *
 * <p>Immutable; the bound charges live in an array that the caller owns.
 */
public final class DiffusionModes {
    private static final double SECONDS_PER_HOUR = 3600;
    /** Share of a time constant under which a series replaces the recurrence: both lose 1e-9 there. */
    private static final double SHORT = 0.02;

    private final double[] timeConstantH;
    private final double[] weight;
    /** w τ: bound charge per ampere in the steady state, h. */
    private final double[] dischargingReachH;

    private final double[] chargingReachH;
    private final double chargingFactor;

    /**
     * Makes modes.
     *
     * @param timeConstantsH τ of each mode, h, above 0
     * @param weights w of each mode, dimensionless, 0 or above, as many as time constants
     * @param chargingFactor γ, 0 to 1: share of the weights that acts while charging
     * @throws IllegalArgumentException if a value is out of range or the lists differ in length
     */
    public DiffusionModes(List<Double> timeConstantsH, List<Double> weights, double chargingFactor) {
        if (timeConstantsH.size() != weights.size()) {
            throw new IllegalArgumentException(
                    "weights are " + weights.size() + ", allowed is one per time constant: " + timeConstantsH.size());
        }
        int size = timeConstantsH.size();
        this.chargingFactor = Require.inside("chargingFactor", chargingFactor, 0, 1, "");
        timeConstantH = new double[size];
        weight = new double[size];
        dischargingReachH = new double[size];
        chargingReachH = new double[size];
        for (int m = 0; m < size; m++) {
            timeConstantH[m] = Require.positive("timeConstantsH[" + m + "]", timeConstantsH.get(m), "h");
            weight[m] = Require.inside("weights[" + m + "]", weights.get(m), 0, Double.MAX_VALUE, "");
            dischargingReachH[m] = weight[m] * timeConstantH[m];
            chargingReachH[m] = chargingFactor * dischargingReachH[m];
        }
    }

    /** Returns the number of modes. */
    public int size() {
        return weight.length;
    }

    /** Returns τ of mode {@code m}, h. */
    public double timeConstantH(int m) {
        return timeConstantH[m];
    }

    /** Returns w of mode {@code m}, dimensionless. */
    public double weight(int m) {
        return weight[m];
    }

    /** Returns γ, the share of the weights that acts while charging, 0 to 1. */
    public double chargingFactor() {
        return chargingFactor;
    }

    /**
     * Moves the bound charges through a time of constant current, exactly, whatever its length.
     *
     * @param boundAh bound charge of each mode, Ah; overwritten
     * @param currentA current, A, positive when discharging
     * @param durationS length of the time, s, 0 or above
     */
    public void advance(double[] boundAh, double currentA, double durationS) {
        double[] reachH = currentA < 0 ? chargingReachH : dischargingReachH;
        double durationH = durationS / SECONDS_PER_HOUR;
        for (int m = 0; m < reachH.length; m++) {
            // expm1 keeps all digits of the small change that a flash of some milliseconds makes
            boundAh[m] -= (reachH[m] * currentA - boundAh[m]) * Math.expm1(-durationH / timeConstantH[m]);
        }
    }

    /**
     * Moves the bound charges through a time in which the drive runs along a parabola, exactly.
     *
     * <pre>
     *   x(t) = x0 e^(−z) + w t (d0 φ1 + d1 φ2 + d2 φ3),   z = t/τ,   φ(n+1) = (1 − n φn)/z,   φ1 = (1 − e^(−z))/z
     * </pre>
     *
     * <p>The drive is the discharging current and γ times the charging one, d0 + d1 u + d2 u² with u from 0 to 1.
     *
     * @param boundAh bound charge of each mode, Ah; overwritten
     * @param constantA d0, A
     * @param linearA d1, A
     * @param squareA d2, A
     * @param durationS length of the time, s, above 0
     */
    public void advance(double[] boundAh, double constantA, double linearA, double squareA, double durationS) {
        double durationH = durationS / SECONDS_PER_HOUR;
        for (int m = 0; m < boundAh.length; m++) {
            double z = durationH / timeConstantH[m];
            double approach = -Math.expm1(-z);
            double first;
            double second;
            double third;
            if (z < SHORT) {
                // the recurrence loses digits here, the series does not
                first = 1 - z / 2 * (1 - z / 3 * (1 - z / 4 * (1 - z / 5)));
                second = 0.5 - z / 6 * (1 - z / 4 * (1 - z / 5));
                third = 1.0 / 3 - z / 12 * (1 - z / 5);
            } else {
                first = approach / z;
                second = (1 - first) / z;
                third = (1 - 2 * second) / z;
            }
            boundAh[m] += -boundAh[m] * approach
                    + weight[m] * durationH * (constantA * first + linearA * second + squareA * third);
        }
    }

    /**
     * Moves the bound charges, after a time in which the drive was taken as its mean, by what its swings about the mean add if
     * they are quick against the time constants. The time is taken in slices, one after the other.
     *
     * @param boundAh bound charge of each mode, Ah; overwritten
     * @param meanAheadAh mean over each slice of what had been driven so far above the mean, Ah
     * @param agoS how long ago each slice began, and last how long ago the time ended, s
     * @param slices number of slices; the arrays may be longer
     */
    public void lag(double[] boundAh, double[] meanAheadAh, double[] agoS, int slices) {
        for (int m = 0; m < boundAh.length; m++) {
            double timeConstantS = SECONDS_PER_HOUR * timeConstantH[m];
            double kept = Math.exp(-agoS[0] / timeConstantS);
            double sumAh = 0;
            for (int i = 0; i < slices; i++) {
                double keptAfter = Math.exp(-agoS[i + 1] / timeConstantS);
                sumAh += meanAheadAh[i] * (kept - keptAfter);
                kept = keptAfter;
            }
            boundAh[m] += weight[m] * sumAh;
        }
    }

    /**
     * Returns a step of one fixed length, for callers that take many steps of the same length: it saves the
     * exponentials.
     *
     * @param durationS length of the step, s, 0 or above
     */
    public DiffusionStep step(double durationS) {
        double[] approach = new double[weight.length];
        for (int m = 0; m < approach.length; m++) {
            approach[m] = -Math.expm1(-durationS / SECONDS_PER_HOUR / timeConstantH[m]);
        }
        return new DiffusionStep(approach, dischargingReachH, chargingReachH);
    }

    /**
     * Returns the sum of the bound charges after a constant current from rest, Ah.
     *
     * @param currentA current, A, positive when discharging
     * @param durationH time since rest, h
     */
    public double boundFromRestAh(double currentA, double durationH) {
        double[] reachH = currentA < 0 ? chargingReachH : dischargingReachH;
        double sumAh = 0;
        for (int m = 0; m < reachH.length; m++) {
            sumAh -= reachH[m] * currentA * Math.expm1(-durationH / timeConstantH[m]);
        }
        return sumAh;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DiffusionModes modes
                && chargingFactor == modes.chargingFactor
                && Arrays.equals(timeConstantH, modes.timeConstantH)
                && Arrays.equals(weight, modes.weight);
    }

    @Override
    public int hashCode() {
        return Objects.hash(chargingFactor, Arrays.hashCode(timeConstantH), Arrays.hashCode(weight));
    }

    @Override
    public String toString() {
        return "DiffusionModes[timeConstantH=" + Arrays.toString(timeConstantH) + ", weight=" + Arrays.toString(weight)
                + ", chargingFactor=" + chargingFactor + "]";
    }
}

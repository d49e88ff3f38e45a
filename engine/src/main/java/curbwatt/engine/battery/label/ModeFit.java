package curbwatt.engine.battery.label;

import curbwatt.engine.battery.DiffusionModes;
import curbwatt.engine.numeric.NonNegativeLeastSquares;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Diffusion modes that follow a Peukert law under constant current, and do what the law cannot: flash and recover.
 *
 * <p>Total charge A and weights w ≥ 0 are the non-negative least-squares solution, in relative error, of
 *
 * <pre>
 *   A − I Σ w_m τ_m (1 − e^(−L/τ_m)) = I L
 * </pre>
 *
 * at 24 constant currents whose lives L are log-spaced from 0.05 to 20 h. Method of this project; the charge per ampere
 * scales out, so weights depend on the exponent alone and A is in proportion to the rated charge.
 *
 * @param totalChargeAh A, Ah
 * @param weights w of each mode, dimensionless
 * @param worstResidualFraction largest relative error among the 24 equations
 */
public record ModeFit(double totalChargeAh, List<Double> weights, double worstResidualFraction) {
    /** τ of the modes, h. Common practice: a factor of four apart, from two minutes to a working day. */
    public static final List<Double> TIME_CONSTANTS_H = List.of(0.03, 0.12, 0.5, 2.0, 8.0);

    private static final int CURRENTS = 24;
    private static final double SHORTEST_LIFE_H = 0.05;
    private static final double LONGEST_LIFE_H = 20;

    /** Copies the list. */
    public ModeFit {
        weights = List.copyOf(weights);
    }

    /** Returns the fit to a law. */
    public static ModeFit of(PeukertLaw law) {
        int modes = TIME_CONSTANTS_H.size();
        RealMatrix matrix = new Array2DRowRealMatrix(CURRENTS, 1 + modes);
        for (int row = 0; row < CURRENTS; row++) {
            double lifeH = SHORTEST_LIFE_H * Math.pow(LONGEST_LIFE_H / SHORTEST_LIFE_H, row / (double) (CURRENTS - 1));
            matrix.setEntry(row, 0, 1 / (law.currentA(lifeH) * lifeH));
            for (int m = 0; m < modes; m++) {
                double timeConstantH = TIME_CONSTANTS_H.get(m);
                matrix.setEntry(row, 1 + m, timeConstantH / lifeH * Math.expm1(-lifeH / timeConstantH));
            }
        }
        RealVector ones = new ArrayRealVector(CURRENTS, 1);
        RealVector solution = NonNegativeLeastSquares.solve(matrix, ones);
        List<Double> weights = new ArrayList<>();
        for (int m = 0; m < modes; m++) {
            weights.add(solution.getEntry(1 + m));
        }
        double worst = matrix.operate(solution).subtract(ones).getLInfNorm();
        return new ModeFit(solution.getEntry(0), weights, worst);
    }

    /**
     * Returns the modes.
     *
     * @param chargingFactor γ, share of the weights that acts while charging, 0 to 1
     */
    public DiffusionModes modes(double chargingFactor) {
        return new DiffusionModes(TIME_CONSTANTS_H, weights, chargingFactor);
    }
}

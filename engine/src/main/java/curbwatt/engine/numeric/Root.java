package curbwatt.engine.numeric;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Roots of continuous functions of one number, by Brent's method. */
public final class Root {
    private static final int MOST_EVALUATIONS = 500;
    private static final double RELATIVE_TOLERANCE = 1e-15;

    private Root() {}

    /**
     * Returns where {@code function} passes zero.
     *
     * @param function continuous and finite between the two ends
     * @param low one end
     * @param high the other end, above {@code low}
     * @param absoluteTolerance largest distance from the true root, in the unit of the argument
     * @return the root; one of the ends if the function is zero there
     * @throws IllegalArgumentException if the function has the same sign at both ends
     */
    public static double between(DoubleUnaryOperator function, double low, double high, double absoluteTolerance) {
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        if (atLow == 0) {
            return low;
        }
        if (atHigh == 0) {
            return high;
        }
        if (!(Math.signum(atLow) * Math.signum(atHigh) < 0)) {
            throw new IllegalArgumentException("no root between " + low + " and " + high + ": the function is " + atLow
                    + " and " + atHigh + " there");
        }
        return new BrentSolver(RELATIVE_TOLERANCE, absoluteTolerance, 0)
                .solve(MOST_EVALUATIONS, function::applyAsDouble, low, high);
    }
}

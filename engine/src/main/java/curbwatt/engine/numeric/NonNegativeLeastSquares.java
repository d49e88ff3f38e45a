package curbwatt.engine.numeric;

import java.util.BitSet;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Least squares with unknowns that must not be negative: minimise |M u − y| with u ≥ 0.
 *
 * <p>Active-set method of C. L. Lawson and R. J. Hanson, Solving Least Squares Problems (1974), chapter 23.
 */
public final class NonNegativeLeastSquares {
    private static final double GRADIENT_TOLERANCE = 1e-12;
    private static final int ROUNDS_PER_UNKNOWN = 30;

    private NonNegativeLeastSquares() {}

    /**
     * Returns the unknowns.
     *
     * @param matrix M, with at least as many rows as columns and columns that are linearly independent
     * @param wanted y, as long as M has rows
     * @return u, as long as M has columns, no element below 0
     * @throws IllegalArgumentException if the sizes do not fit
     * @throws IllegalStateException if the method does not end, which rounding alone can cause
     */
    public static RealVector solve(RealMatrix matrix, RealVector wanted) {
        int unknowns = matrix.getColumnDimension();
        if (matrix.getRowDimension() != wanted.getDimension() || matrix.getRowDimension() < unknowns) {
            throw new IllegalArgumentException("matrix is " + matrix.getRowDimension() + " by " + unknowns
                    + " and the right side has " + wanted.getDimension()
                    + " elements, allowed is one element per row and at least as many rows as columns");
        }
        RealVector solution = new ArrayRealVector(unknowns);
        BitSet free = new BitSet(unknowns);
        double smallestGradient = GRADIENT_TOLERANCE * matrix.getNorm() * wanted.getL1Norm();
        for (int round = 0; round < ROUNDS_PER_UNKNOWN * unknowns; round++) {
            int enter = steepest(matrix.preMultiply(wanted.subtract(matrix.operate(solution))), free, smallestGradient);
            if (enter < 0) {
                return solution;
            }
            free.set(enter);
            solution = descend(matrix, wanted, free, solution);
        }
        throw new IllegalStateException(
                "non-negative least squares did not end after " + ROUNDS_PER_UNKNOWN * unknowns + " rounds");
    }

    /** Index of the held unknown that would lower the residual fastest, or −1 where none would. */
    private static int steepest(RealVector gradient, BitSet free, double smallestGradient) {
        int best = -1;
        double largest = smallestGradient;
        for (int i = free.nextClearBit(0); i < gradient.getDimension(); i = free.nextClearBit(i + 1)) {
            if (gradient.getEntry(i) > largest) {
                largest = gradient.getEntry(i);
                best = i;
            }
        }
        return best;
    }

    /** Goes to the least-squares point of the free unknowns, holding at 0 those that would pass it on the way. */
    private static RealVector descend(RealMatrix matrix, RealVector wanted, BitSet free, RealVector start) {
        RealVector at = start;
        while (true) {
            RealVector target = unconstrained(matrix, wanted, free);
            double reach = 1;
            for (int i = free.nextSetBit(0); i >= 0; i = free.nextSetBit(i + 1)) {
                if (target.getEntry(i) <= 0) {
                    reach = Math.min(reach, at.getEntry(i) / (at.getEntry(i) - target.getEntry(i)));
                }
            }
            if (reach == 1) {
                return target;
            }
            at = at.add(target.subtract(at).mapMultiply(reach));
            for (int i = free.nextSetBit(0); i >= 0; i = free.nextSetBit(i + 1)) {
                if (at.getEntry(i) <= GRADIENT_TOLERANCE) {
                    at.setEntry(i, 0);
                    free.clear(i);
                }
            }
        }
    }

    private static RealVector unconstrained(RealMatrix matrix, RealVector wanted, BitSet free) {
        int[] rows = new int[matrix.getRowDimension()];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = i;
        }
        int[] columns = free.stream().toArray();
        RealVector part = new QRDecomposition(matrix.getSubMatrix(rows, columns))
                .getSolver()
                .solve(wanted);
        RealVector whole = new ArrayRealVector(matrix.getColumnDimension());
        for (int i = 0; i < columns.length; i++) {
            whole.setEntry(columns[i], part.getEntry(i));
        }
        return whole;
    }
}

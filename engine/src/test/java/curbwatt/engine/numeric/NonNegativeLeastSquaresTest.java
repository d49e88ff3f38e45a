package curbwatt.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

class NonNegativeLeastSquaresTest {
    @Test
    void returnsTheExactSolutionWhereItIsNotNegative() {
        RealMatrix matrix = new Array2DRowRealMatrix(new double[][] {{1, 2}, {3, 4}, {5, 7}});
        RealVector expected = new ArrayRealVector(new double[] {0.5, 2});
        RealVector found = NonNegativeLeastSquares.solve(matrix, matrix.operate(expected));
        assertThat(found.subtract(expected).getLInfNorm()).isLessThan(1e-12);
    }

    @Test
    void meetsTheConditionsOfTheOptimum() {
        Random random = new Random(11);
        for (int problem = 0; problem < 200; problem++) {
            RealMatrix matrix = new Array2DRowRealMatrix(12, 6);
            RealVector wanted = new ArrayRealVector(12);
            for (int row = 0; row < 12; row++) {
                wanted.setEntry(row, random.nextGaussian());
                for (int column = 0; column < 6; column++) {
                    matrix.setEntry(row, column, random.nextGaussian());
                }
            }
            RealVector found = NonNegativeLeastSquares.solve(matrix, wanted);
            RealVector gradient = matrix.preMultiply(wanted.subtract(matrix.operate(found)));
            for (int i = 0; i < 6; i++) {
                assertThat(found.getEntry(i)).isGreaterThanOrEqualTo(0);
                assertThat(gradient.getEntry(i)).isLessThan(1e-9);
                // Karush, Kuhn and Tucker: a free unknown has no gradient left
                assertThat(found.getEntry(i) * gradient.getEntry(i)).isCloseTo(0, within(1e-9));
            }
        }
    }

    @Test
    void refusesSizesThatDoNotFit() {
        assertThatThrownBy(() -> NonNegativeLeastSquares.solve(new Array2DRowRealMatrix(2, 3), new ArrayRealVector(2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 by 3");
    }
}

package curbwatt.engine.study.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Variance shares of functions whose shares are known. */
class VarianceSharePublishedTest {

    private static final String TOPIC = "Chances: variance shares";
    private static final int DRAWS = 16384;

    /** sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1, each uniform over −π … π. */
    private static double ishigami(List<Double> point) {
        double x1 = angle(point.get(0));
        double x2 = angle(point.get(1));
        double x3 = angle(point.get(2));
        return Math.sin(x1) + 7 * Math.sin(x2) * Math.sin(x2) + 0.1 * Math.pow(x3, 4) * Math.sin(x1);
    }

    private static double angle(double share) {
        return Math.PI * (2 * share - 1);
    }

    private static VarianceShare share(Sampling sampling, int inputs, int input, ToDoubleFunction<List<Double>> of) {
        List<List<Double>> points = new UnitPoints(sampling, 7, 2 * inputs).points(DRAWS);
        double[] a = new double[DRAWS];
        double[] b = new double[DRAWS];
        double[] ab = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            List<Double> first = points.get(i).subList(0, inputs);
            List<Double> second = points.get(i).subList(inputs, 2 * inputs);
            List<Double> mixed = new ArrayList<>(first);
            mixed.set(input, second.get(input));
            a[i] = of.applyAsDouble(first);
            b[i] = of.applyAsDouble(second);
            ab[i] = of.applyAsDouble(mixed);
        }
        return VarianceShare.of(a, b, ab, 1);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.3139, 0.5576", "1, 0.4424, 0.4424", "2, 0, 0.2437"})
    void ishigamiFunction(int input, double first, double total, TestReporter reporter) {
        VarianceShare ours = share(Sampling.SOBOL, 3, input, VarianceSharePublishedTest::ishigami);
        String of = "Ishigami function, a = 7, b = 0.1: %s of x" + (input + 1);
        String source = "Ishigami and Homma 1990; values in Saltelli and others, Sensitivity Analysis, 2000";
        new Published(TOPIC, String.format(of, "first order"), "1", first, 0.01, Obtained.MEMORY, source)
                .check(ours.firstFraction(), reporter);
        new Published(TOPIC, String.format(of, "total"), "1", total, 0.01, Obtained.MEMORY, source)
                .check(ours.totalFraction(), reporter);
        assertThat(first).isBetween(ours.lowFraction(), ours.highFraction());
    }

    /** The variances of independent normal figures add up, so each share is its square over the sum of squares. */
    @ParameterizedTest
    @CsvSource({"0, 0.0714286", "1, 0.2857143", "2, 0.6428571"})
    void weightedSumOfNormalFigures(int input, double exact, TestReporter reporter) {
        VarianceShare ours = share(Sampling.SEEDED, 3, input, VarianceSharePublishedTest::weightedSum);
        new Published(
                        TOPIC,
                        "x1 + 2 x2 + 3 x3, standard normal, drawn at random: first order of x" + (input + 1),
                        "1",
                        exact,
                        0.03,
                        Obtained.DERIVED,
                        "variances of independent figures add up")
                .check(ours.firstFraction(), reporter);
        assertThat(ours.totalFraction()).isBetween(exact - 0.03, exact + 0.03);
        assertThat(exact).isBetween(ours.lowFraction(), ours.highFraction());
    }

    private static double weightedSum(List<Double> point) {
        Spread normal = new Spread(Spread.Shape.NORMAL, 0, 1, -8, 8, "");
        Spread.Possible all = new Spread.Possible(-100, 100, "");
        double sum = 0;
        for (int i = 0; i < point.size(); i++) {
            sum += (i + 1) * normal.valueAt(point.get(i), all);
        }
        return sum;
    }

    @Test
    void outcomesThatAreAllTheSameAreRefused() {
        double[] same = {1, 1, 1};
        assertThatThrownBy(() -> VarianceShare.of(same, same, same, 1)).hasMessageContaining("no variance");
    }
}

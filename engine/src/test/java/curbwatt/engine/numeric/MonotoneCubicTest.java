package curbwatt.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MonotoneCubicTest {
    private final MonotoneCubic curve =
            new MonotoneCubic(List.of(0.0, 1.0, 2.0, 4.0, 5.0), List.of(0.0, 1.0, 1.5, 1.6, 4.0));

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 1", "2, 1.5", "4, 1.6", "5, 4", "-3, 0", "9, 4"})
    void goesThroughTheTableAndHoldsItsEnds(double x, double y) {
        assertThat(curve.value(x)).isEqualTo(y);
    }

    /** Values of an independent implementation: SciPy 1.17, scipy.interpolate.PchipInterpolator. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.5729166666666667", "1.5, 1.3208333333333333", "3, 1.5475888324873097", "4.5, 2.415788917089679"
    })
    void agreesWithAnIndependentImplementation(double x, double y) {
        assertThat(curve.value(x)).isCloseTo(y, within(1e-12));
    }

    @Test
    void neverOvershootsAMonotoneTable() {
        Random random = new Random(7);
        for (int table = 0; table < 200; table++) {
            List<Double> x = new ArrayList<>(List.of(0.0));
            List<Double> y = new ArrayList<>(List.of(0.0));
            for (int i = 1; i < 8; i++) {
                x.add(x.get(i - 1) + 0.01 + random.nextDouble());
                y.add(y.get(i - 1) + (random.nextBoolean() ? Math.pow(random.nextDouble(), 6) : 0));
            }
            MonotoneCubic monotone = new MonotoneCubic(x, y);
            double before = 0;
            for (int i = 0; i <= 1000; i++) {
                double now = monotone.value(x.get(7) * i / 1000);
                assertThat(now).isGreaterThanOrEqualTo(before - 1e-15);
                before = now;
            }
        }
    }

    @Test
    void refusesTablesThatAreNone() {
        assertThatThrownBy(() -> new MonotoneCubic(List.of(0.0, 0.0), List.of(1.0, 2.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("abscissa[1] is 0.0");
        assertThatThrownBy(() -> new MonotoneCubic(List.of(0.0), List.of(1.0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MonotoneCubic(List.of(0.0, 1.0), List.of(1.0, Double.NaN)))
                .hasMessageContaining("ordinate[1]");
    }
}

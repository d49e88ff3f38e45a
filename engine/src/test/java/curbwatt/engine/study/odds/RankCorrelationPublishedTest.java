package curbwatt.engine.study.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

class RankCorrelationPublishedTest {

    /** Rank correlation of two normal figures with correlation r is 6/π · asin(r / 2). */
    @Test
    void ofTwoNormalFigures(TestReporter reporter) {
        Spread normal = new Spread(Spread.Shape.NORMAL, 0, 1, -8, 8, "");
        Spread.Possible all = new Spread.Possible(-9, 9, "");
        List<List<Double>> points = new UnitPoints(Sampling.SOBOL, 3, 2).points(4096);
        double[] x = points.stream()
                .mapToDouble(point -> normal.valueAt(point.get(0), all))
                .toArray();
        double[] y = points.stream()
                .mapToDouble(point -> 0.6 * normal.valueAt(point.get(0), all) + 0.8 * normal.valueAt(point.get(1), all))
                .toArray();

        RankCorrelation ours = RankCorrelation.of(x, y);

        double exact = 6 / Math.PI * Math.asin(0.3);
        new Published(
                        "Chances: rank correlation",
                        "two normal figures of correlation 0.6",
                        "1",
                        exact,
                        0.01,
                        Obtained.DERIVED,
                        "Pearson 1907: ρ = 6/π · asin(r/2)")
                .check(ours.rhoRatio(), reporter);
        assertThat(exact).isBetween(ours.lowRatio(), ours.highRatio());
    }

    @Test
    void boundsFollowTheirFormula() {
        RankCorrelation half = RankCorrelation.of(0.5, 103);
        double reach = 1.959964 * Math.sqrt(1.125 / 100);
        assertThat(half.lowRatio()).isEqualTo(Math.tanh(0.5493061 - reach), within(1e-6));
        assertThat(half.highRatio()).isEqualTo(Math.tanh(0.5493061 + reach), within(1e-6));
        RankCorrelation whole = RankCorrelation.of(1, 103);
        assertThat(whole.highRatio()).isLessThanOrEqualTo(1);
    }

    @Test
    void aColumnThatIsTheSameThroughoutIsRefused() {
        assertThatThrownBy(() -> RankCorrelation.of(new double[] {1, 2, 3, 4}, new double[] {5, 5, 5, 5}))
                .hasMessageContaining("same throughout");
    }
}

package curbwatt.engine.study.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.study.StudyTruck;
import curbwatt.engine.study.odds.Spread.Possible;
import curbwatt.engine.study.odds.Spread.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SpreadTest {

    private static final Possible ALL = new Possible(-1000, 1000, "");

    /** Quantiles by hand: a bell at ±1.959964 sd, a straight line, a triangle at √(share · width · rise). */
    @ParameterizedTest
    @CsvSource({
        "NORMAL, 0.975, 11.959964",
        "NORMAL, 0.5, 10",
        "UNIFORM, 0.25, 7",
        "TRIANGULAR, 0.2, 8.449490",
        "TRIANGULAR, 0.4, 10"
    })
    void quantiles(Shape shape, double share, double value) {
        double from = shape == Shape.NORMAL ? -90 : shape == Shape.UNIFORM ? 4 : 4.969;
        Spread spread = shape == Shape.TRIANGULAR
                ? new Spread(shape, 10, 1, 10 - 4 * Math.sqrt(1), 16, "")
                : new Spread(shape, 10, 1, from, shape == Shape.UNIFORM ? 16 : 110, "");
        double expected = shape == Shape.TRIANGULAR ? 6 + Math.sqrt(share * 10 * 4) : value;
        assertThat(spread.valueAt(share, ALL)).isEqualTo(expected, within(1e-5));
    }

    /** A bell cut off at one standard deviation: half of what is left lies on each side, and a quarter within 0.32 sd. */
    @Test
    void aBellIsCutOffWithoutHeapingAtItsEnds() {
        Spread cut = new Spread(Shape.NORMAL, 0, 1, -1, 1, "");
        assertThat(cut.valueAt(0, ALL)).isEqualTo(-1, within(1e-9));
        assertThat(cut.valueAt(1, ALL)).isEqualTo(1, within(1e-9));
        // Φ(x) = 0.5 + 0.25 · 0.6826895 at x = 0.4417
        assertThat(cut.valueAt(0.75, ALL)).isEqualTo(0.4417, within(2e-4));
    }

    @Test
    void whatIsImpossibleIsCutOffToo() {
        Spread wide = new Spread(Shape.UNIFORM, 0, 1, 0.5, 1.5, "");
        assertThat(wide.valueAt(0.5, new Possible(0.7, 1.1, ""))).isEqualTo(0.9, within(1e-9));
        assertThatThrownBy(() -> wide.valueAt(0.5, new Possible(2, 3, ""))).hasMessageContaining("possible");
    }

    @Test
    void figuresThatDoNotGoTogetherAreRefused() {
        assertThatThrownBy(() -> new Spread(Shape.UNIFORM, 0, 1, 2, 1, "")).hasMessageContaining("from");
        assertThatThrownBy(() -> new Spread(Shape.NORMAL, 5, 1, 0, 1, "")).hasMessageContaining("likeliest");
        assertThatThrownBy(() -> new Spread(Shape.NORMAL, 0, 0, -1, 1, "")).hasMessageContaining("sd");
    }

    /** The ends of the usual spreads and of what is possible give vehicles and scenes that are not refused. */
    @ParameterizedTest
    @EnumSource(Input.class)
    void theEndsOfEachInputAreAccepted(Input input) {
        var base = StudyTruck.question().simulation();
        Possible possible = new PossibleValues(base).of(input);
        Spread all = new Spread(Shape.UNIFORM, 0, 1, -1000, 1000, "");
        assertThat(input.isIn(base)).isTrue();
        for (double share : new double[] {0, 0.3, 1}) {
            assertThat(input.variation(input.usual().valueAt(share, possible)).of(base))
                    .isNotNull();
            assertThat(input.variation(all.valueAt(share, possible)).of(base)).isNotNull();
        }
    }
}

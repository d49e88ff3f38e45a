package curbwatt.engine.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TrendTest {

    @Test
    void comparesLikeWithLikeAndLeavesOutTheFirstHalf() {
        // three days of pattern, 1 % down in each repeat once it has settled
        List<Double> charges = IntStream.range(0, 30)
                .mapToObj(day -> (day < 12 ? 2.0 : 1.0) - 0.01 * Math.floorDiv(day, 3) - 0.1 * (day % 3))
                .toList();
        Trend trend = Trend.of(charges, 3).orElseThrow();
        assertThat(trend.weeklyFraction()).isCloseTo(-0.01 * 7 / 3, within(1e-12));
        assertThat(trend.fromDay()).isEqualTo(18);
        assertThat(trend.toDay()).isEqualTo(30);
        assertThat(trend.isDown()).isTrue();
    }

    @Test
    void hasNothingToSayAboutTooFewRepeats() {
        assertThat(Trend.of(List.of(1.0, 0.9, 0.8, 0.7), 2)).isEmpty();
        assertThat(Trend.of(List.of(1.0, 0.9, 0.8), 1)).isPresent();
        assertThat(Trend.of(List.of(), 1)).isEmpty();
    }

    @Test
    void aSmallChangeIsNone() {
        assertThat(new Trend(-0.0009, 1, 2).isDown()).isFalse();
        assertThat(new Trend(-0.0011, 1, 2).isDown()).isTrue();
    }
}

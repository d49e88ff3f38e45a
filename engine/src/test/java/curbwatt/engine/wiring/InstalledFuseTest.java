package curbwatt.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class InstalledFuseTest {
    private static final InstalledFuse BLADE_20 = new InstalledFuse(new FuseRating(FuseType.BLADE, 20), 20);

    @ParameterizedTest
    @EnumSource(FuseType.class)
    void neverOpensUpToItsRating(FuseType type) {
        for (double ratingA : type.ratingsA()) {
            for (double ambientC : new double[] {-40, 20, 60, 125}) {
                InstalledFuse fuse = new InstalledFuse(new FuseRating(type, ratingA), ambientC);
                assertThat(fuse.earliestS(fuse.effectiveA())).isInfinite();
                assertThat(fuse.opensInS(0.9, fuse.effectiveA())).isInfinite();
                assertThat(fuse.heatAfter(0.9, fuse.effectiveA(), 1e7)).isBetween(0.0, 0.9);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(FuseType.class)
    void moreCurrentNeverLastsLongerAndTheTypicalFuseLiesBetween(FuseType type) {
        double earliestS = Double.POSITIVE_INFINITY;
        double typicalS = Double.POSITIVE_INFINITY;
        double latestS = Double.POSITIVE_INFINITY;
        for (double multiple = 0.5; multiple < 30; multiple *= 1.01) {
            assertThat(type.earliestS(multiple)).isLessThanOrEqualTo(earliestS);
            assertThat(type.typicalS(multiple)).isLessThanOrEqualTo(typicalS);
            assertThat(type.latestS(multiple)).isLessThanOrEqualTo(latestS);
            earliestS = type.earliestS(multiple);
            typicalS = type.typicalS(multiple);
            latestS = type.latestS(multiple);
            assertThat(typicalS).isBetween(earliestS, latestS);
        }
    }

    @ParameterizedTest
    @EnumSource(FuseType.class)
    void onceHeatCannotFlowOffItIsTheHeatThatCounts(FuseType type) {
        assertThat(type.latestS(40) * 40 * 40).isCloseTo(type.latestS(10) * 10 * 10, within(1e-9));
        assertThat(type.earliestS(40) * 40 * 40).isCloseTo(type.earliestS(10) * 10 * 10, within(1e-9));
    }

    @Test
    void aConstantCurrentOpensItInTheTypicalTime() {
        double typicalS = FuseType.BLADE.typicalS(2);
        assertThat(BLADE_20.opensInS(0, 40)).isEqualTo(typicalS);
        assertThat(BLADE_20.heatAfter(0, 40, typicalS)).isCloseTo(1, within(1e-12));
        assertThat(BLADE_20.heatAfter(0, -40, typicalS)).isCloseTo(1, within(1e-12));
        double halfway = BLADE_20.heatAfter(0, 40, 0.5 * typicalS);
        assertThat(BLADE_20.opensInS(halfway, 40)).isCloseTo(0.5 * typicalS, within(1e-12));
    }

    @Test
    void aChangingCurrentAddsUp() {
        double heat = BLADE_20.heatAfter(0, 40, 0.5 * FuseType.BLADE.typicalS(2));
        heat = BLADE_20.heatAfter(heat, 32, 0.5 * FuseType.BLADE.typicalS(1.6));
        assertThat(heat).isCloseTo(1, within(1e-12));
    }

    /** 110 % for a tenth of each second, 20 % of it in between: the mean is far below the rating. */
    @Test
    void shortPeaksOfAFlashingLoadDoNotAddUpForHours() {
        double heat = 0;
        for (int second = 0; second < 100_000; second++) {
            heat = BLADE_20.heatAfter(BLADE_20.heatAfter(heat, 22, 0.1), 4, 0.9);
        }
        assertThat(heat).isLessThan(0.01);
    }

    @Test
    void warmAirMakesItOpenEarlier() {
        InstalledFuse hot = new InstalledFuse(new FuseRating(FuseType.BLADE, 20), 85);
        assertThat(hot.effectiveA()).isEqualTo(15);
        assertThat(hot.opensInS(0, 30)).isEqualTo(BLADE_20.opensInS(0, 40));
    }

    @Test
    void theNextRatingSold() {
        assertThat(FuseRating.atLeast(FuseType.BLADE, 12.5)).contains(new FuseRating(FuseType.BLADE, 15));
        assertThat(FuseRating.atLeast(FuseType.BLADE, 15)).contains(new FuseRating(FuseType.BLADE, 15));
        assertThat(FuseRating.atLeast(FuseType.MAXI, 81)).isEmpty();
    }

    @Test
    void refusesImpossibleValues() {
        assertThatThrownBy(() -> new FuseRating(FuseType.MAXI, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("ratedA is 0.0 A, allowed is 0.5 to 500.0 A");
        assertThatThrownBy(() -> new InstalledFuse(new FuseRating(FuseType.MAXI, 40), 130))
                .hasMessageContaining("ambientC is 130.0 °C");
    }
}

package curbwatt.engine.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LifeEstimateTest {

    @Test
    void byHand() {
        // One cycle to 50 % a day lasts 370 days by the table; 185 to 740 with a spread of 2.
        LifeEstimate life = LifeEstimate.of(CycleCount.of(List.of(1.0, 0.5, 1.0)), CycleLife.absorbedMat(), 1);
        // Out and back without anything before or after it counts as two halves: the same.
        assertThat(life.middleDays()).isCloseTo(370, within(1e-9));
        assertThat(life.lowDays()).isCloseTo(185, within(1e-9));
        assertThat(life.highDays()).isCloseTo(740, within(1e-9));
    }

    @Test
    void depthsAddUp() {
        // 0.25 once and 0.10 twice a day: 1/925 + 2/3100 = 1/579.2
        CycleCount day = CycleCount.of(List.of(1.0, 0.9, 1.0, 0.9, 1.0, 0.75, 1.0));
        assertThat(LifeEstimate.of(day, CycleLife.absorbedMat(), 1).middleDays())
                .isCloseTo(1 / (1 / 925.0 + 2 / 3100.0), within(1e-6));
    }

    @Test
    void noCyclesNoWear() {
        LifeEstimate life = LifeEstimate.of(new CycleCount(List.of()), CycleLife.floodedStarter(), 30);
        assertThat(life.wornFraction()).isZero();
        assertThat(life.lowDays()).isInfinite();
    }

    @Test
    void deeperNeverLastsLonger() {
        for (CycleLife life :
                List.of(CycleLife.absorbedMat(), CycleLife.floodedTraction(), CycleLife.floodedStarter())) {
            for (double depth = 0.005; depth < 1; depth += 0.005) {
                assertThat(life.cyclesAt(depth + 0.005)).isLessThan(life.cyclesAt(depth));
            }
            for (CycleLife.Point point : life.points()) {
                assertThat(life.cyclesAt(point.depthFraction())).isCloseTo(point.cycles(), within(1e-9));
            }
        }
        assertThat(CycleLife.floodedStarter().cyclesAt(0)).isInfinite();
    }

    @Test
    void throughputKeepsTheTwoDirectionsApart() {
        ChargeThroughput through =
                ChargeThroughput.none().plus(20, 3600).plus(-5, 7200).plus(10, 1800);
        assertThat(through).isEqualTo(new ChargeThroughput(25, 10));
        assertThat(through.fullDischarges(50)).isEqualTo(0.5);
        assertThatThrownBy(() -> new ChargeThroughput(-1, 0)).hasMessageContaining("dischargedAh is -1.0 Ah");
    }

    @Test
    void refusesATableThatRises() {
        assertThatThrownBy(
                        () -> new CycleLife(List.of(new CycleLife.Point(0.2, 100), new CycleLife.Point(0.5, 200)), 2))
                .hasMessageContaining("must fall with depth");
        assertThatThrownBy(() -> new CycleLife(List.of(), 2)).hasMessageContaining("no point");
    }
}

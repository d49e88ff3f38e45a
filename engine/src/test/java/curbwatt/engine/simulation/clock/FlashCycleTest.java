package curbwatt.engine.simulation.clock;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlashCycleTest {
    private static final long MS = 1_000_000;

    @Test
    void edgesLieOnWholeNanoseconds() {
        FlashCycle cycle = FlashCycle.of(Loads.flashing("a", 1000.0 / 3, 0, 0, 100.0 / 3));
        assertThat(edges(cycle, 4)).containsExactly(33_333_333L, 333_333_333L, 366_666_666L, 666_666_666L);
    }

    @Test
    void litFromAnEdgeOnUntilTheNext() {
        FlashCycle cycle = FlashCycle.of(Loads.flashing("a", 500, 0, 0, 100, 150, 250));
        assertThat(cycle.isLit()).isTrue();
        List<Boolean> lit = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            cycle.advance();
            lit.add(cycle.isLit());
        }
        assertThat(lit).containsExactly(false, true, false, true);
        assertThat(cycle.nextEdgeNs()).isEqualTo(600 * MS);
    }

    @Test
    void aPhaseThatCarriesAnIntervalOverTheEndOfTheCycleLightsItsStart() {
        FlashCycle cycle = FlashCycle.of(Loads.flashing("a", 500, 400, 0, 200));
        assertThat(cycle.isLit()).isTrue();
        assertThat(edges(cycle, 4)).containsExactly(100 * MS, 400 * MS, 600 * MS, 900 * MS);
    }

    @Test
    void aWholePeriodOfPhaseIsNone() {
        assertThat(edges(FlashCycle.of(Loads.flashing("a", 500, 500, 0, 200)), 10))
                .isEqualTo(edges(FlashCycle.of(Loads.flashing("a", 500, 0, 0, 200)), 10));
    }

    @Test
    void intervalsThatTouchAreOne() {
        assertThat(edges(FlashCycle.of(Loads.flashing("a", 500, 0, 0, 100, 100, 250)), 2))
                .containsExactly(250 * MS, 500 * MS);
    }

    @Test
    void aCycleThatIsAllLitHasNoEdges() {
        FlashCycle cycle = FlashCycle.of(Loads.flashing("a", 500, 123, 0, 500));
        assertThat(cycle.isLit()).isTrue();
        assertThat(cycle.nextEdgeNs()).isEqualTo(FlashCycle.NEVER);
        assertThat(FlashCycle.of(new LoadPattern.Continuous()).nextEdgeNs()).isEqualTo(FlashCycle.NEVER);
        assertThat(FlashCycle.of(new LoadPattern.Duty(60, 60, 0, 0)).nextEdgeNs())
                .isEqualTo(FlashCycle.NEVER);
    }

    /** One head's end is the other's begin, whatever the period: neither darkness nor both, to the nanosecond. */
    @ParameterizedTest
    @ValueSource(doubles = {500, 1000.0 / 3, 600.1, 428.571, 60000.0 / 75, 60000.0 / 115})
    void alternatingHeadsNeverLeaveAGap(double periodMs) {
        FlashCycle left = FlashCycle.of(Loads.flashing("a", periodMs, 0, 0, periodMs / 2));
        FlashCycle right = FlashCycle.of(Loads.flashing("a", periodMs, periodMs / 2, 0, periodMs / 2));
        for (int i = 0; i < 10_000; i++) {
            assertThat(left.isLit()).isNotEqualTo(right.isLit());
            assertThat(left.nextEdgeNs()).isEqualTo(right.nextEdgeNs());
            left.advance();
            right.advance();
        }
    }

    @Test
    void threeInterleavedHeadsAreLitOneAtATime() {
        double period = 1000.0 / 3;
        List<FlashCycle> heads = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            heads.add(FlashCycle.of(Loads.flashing("a", period, i * period / 3, 0, period / 3)));
        }
        for (int edge = 0; edge < 30_000; edge++) {
            long now = heads.stream().mapToLong(FlashCycle::nextEdgeNs).min().orElseThrow();
            // edges a nanosecond apart count as one instant in a run
            heads.forEach(head -> {
                while (head.nextEdgeNs() <= now + 2) {
                    head.advance();
                }
            });
            assertThat(heads.stream().filter(FlashCycle::isLit)).hasSize(1);
        }
    }

    @Test
    void nothingDriftsOverAHundredThousandCycles() {
        FlashCycle cycle = FlashCycle.of(Loads.flashing("a", 1000.0 / 3, 10, 0, 100));
        for (int i = 0; i < 200_000; i++) {
            cycle.advance();
        }
        assertThat(cycle.nextEdgeNs()).isEqualTo(100_000L * 333_333_333L + 10 * MS);
        assertThat(cycle.isLit()).isFalse();
    }

    @Test
    void clocksOfTheirOwnRunApartAndMeetAgain() {
        FlashCycle slow = FlashCycle.of(Loads.flashing("a", 505, 0, 0, 100));
        FlashCycle fast = FlashCycle.of(Loads.flashing("b", 500, 0, 0, 100));
        List<Long> slowEdges = edges(slow, 203);
        List<Long> fastEdges = edges(fast, 203);
        assertThat(slowEdges.get(2) - fastEdges.get(2)).isEqualTo(5 * MS);
        // 100 slow cycles are 101 fast ones
        assertThat(slowEdges.get(199)).isEqualTo(fastEdges.get(201)).isEqualTo(50_500 * MS);
    }

    @Test
    void dutyBeginsAtItsOffsetAndRunsOverTheEndOfItsCycle() {
        FlashCycle plain = FlashCycle.of(new LoadPattern.Duty(3, 60, 10, 0));
        assertThat(plain.isLit()).isFalse();
        assertThat(edges(plain, 3)).containsExactly(10_000 * MS, 13_000 * MS, 70_000 * MS);
        FlashCycle over = FlashCycle.of(new LoadPattern.Duty(20, 60, 50, 0));
        assertThat(over.isLit()).isTrue();
        assertThat(edges(over, 2)).containsExactly(10_000 * MS, 50_000 * MS);
    }

    private static List<Long> edges(FlashCycle cycle, int count) {
        List<Long> edges = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            edges.add(cycle.nextEdgeNs());
            cycle.advance();
        }
        return edges;
    }
}

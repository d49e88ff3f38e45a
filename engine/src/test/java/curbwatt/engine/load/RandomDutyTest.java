package curbwatt.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RandomDutyTest {
    private static final int EDGES_OF_A_BLOCK = 2 * RandomEdges.CYCLES;

    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 42, Long.MAX_VALUE, Long.MIN_VALUE})
    void edgesRiseAndOnTimesKeepTheirLength(long seed) {
        for (double onShare : new double[] {0.001, 0.05, 0.5, 0.9}) {
            LoadPattern.RandomDuty duty = new LoadPattern.RandomDuty(10 * onShare, 10, 0, seed);
            long before = -1;
            for (long i = 0; i < 10 * EDGES_OF_A_BLOCK; i++) {
                long edgeNs = duty.edgeNs(i);
                assertThat(edgeNs).isGreaterThan(before);
                if (i % 2 == 1) {
                    assertThat(edgeNs - before).isEqualTo(Math.round(10 * onShare * 1e9));
                }
                before = edgeNs;
            }
        }
    }

    @Test
    void everyBlockHoldsItsOnTimesAndNoOthers() {
        LoadPattern.RandomDuty duty = new LoadPattern.RandomDuty(4, 60, 0, 7);
        long blockNs = RandomEdges.CYCLES * 60_000_000_000L;
        for (long block = 0; block < 100; block++) {
            assertThat(duty.edgeNs(block * EDGES_OF_A_BLOCK)).isGreaterThanOrEqualTo(block * blockNs);
            assertThat(duty.edgeNs((block + 1) * EDGES_OF_A_BLOCK - 1)).isLessThan((block + 1) * blockNs);
        }
    }

    @Test
    void anEdgeDependsOnItsIndexAlone() {
        LoadPattern.RandomDuty duty = new LoadPattern.RandomDuty(4, 60, 0, 7);
        List<Long> forwards = LongStream.range(0, 200).mapToObj(duty::edgeNs).toList();
        List<Long> backwards = new ArrayList<>();
        for (long i = 199; i >= 0; i--) {
            backwards.add(0, new LoadPattern.RandomDuty(4, 60, 0, 7).edgeNs(i));
        }
        assertThat(backwards).isEqualTo(forwards);
        assertThat(new LoadPattern.RandomDuty(4, 60, 0, 8).edgeNs(0)).isNotEqualTo(forwards.get(0));
    }

    @Test
    void gapsAreCloseToExponential() {
        LoadPattern.RandomDuty duty = new LoadPattern.RandomDuty(3, 60, 0, 2026);
        int gaps = 20_000;
        double sum = 0;
        double squares = 0;
        int longer = 0;
        for (long i = 0; i < gaps; i++) {
            double gapS = (duty.edgeNs(2 * i + 2) - duty.edgeNs(2 * i + 1)) / 1e9;
            sum += gapS;
            squares += gapS * gapS;
            longer += gapS > 57 ? 1 : 0;
        }
        double meanS = sum / gaps;
        assertThat(meanS).isCloseTo(57, within(0.3));
        assertThat(Math.sqrt(squares / gaps - meanS * meanS) / meanS)
                .as("deviation over mean; exponential: 1")
                .isBetween(0.92, 1.02);
        assertThat((double) longer / gaps)
                .as("gaps above their mean; exponential: 1/e")
                .isCloseTo(Math.exp(-1), within(0.02));
    }

    @Test
    void loadsOfTwoSeedsRarelyMeet() {
        LoadPattern.RandomDuty one = new LoadPattern.RandomDuty(3, 60, 0, 1);
        LoadPattern.RandomDuty other = new LoadPattern.RandomDuty(3, 60, 0, 2);
        double bothS = 0;
        int cycles = 5000;
        long j = 0;
        for (long i = 0; i < cycles; i++) {
            long fromNs = one.edgeNs(2 * i);
            while (other.edgeNs(2 * j + 1) < fromNs) {
                j++;
            }
            for (long k = j; other.edgeNs(2 * k) < one.edgeNs(2 * i + 1); k++) {
                bothS += (Math.min(one.edgeNs(2 * i + 1), other.edgeNs(2 * k + 1))
                                - Math.max(fromNs, other.edgeNs(2 * k)))
                        / 1e9;
            }
        }
        assertThat(bothS / (cycles * 60.0)).as("both on; independent: 0.05²").isCloseTo(0.0025, within(0.0003));
    }

    @Test
    void refusesWhatLeavesNoFreeTime() {
        assertThatThrownBy(() -> new LoadPattern.RandomDuty(9.5, 10, 0, 1))
                .hasMessage("onS is 9.5 s, allowed is 0.001 to 9.0 s");
    }
}

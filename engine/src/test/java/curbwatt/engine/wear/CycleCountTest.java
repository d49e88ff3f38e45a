package curbwatt.engine.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CycleCountTest {

    @Test
    void aDayOutAndBackIsOneCycleADay() {
        List<Double> record = new ArrayList<>(List.of(1.0));
        for (int day = 0; day < 365; day++) {
            record.addAll(List.of(0.9, 0.7, 0.85, 1.0, 1.0));
        }
        CycleCount count = CycleCount.of(record);
        assertThat(count.byDepth(10).get(3).halfCycles()).as("0.3 deep").isEqualTo(2 * 365);
        assertThat(count.deepestFraction()).isCloseTo(0.3, within(1e-12));
    }

    @Test
    void aSmallSwingInsideALargeOneLeavesTheLargeOneWhole() {
        CycleCount count = CycleCount.of(List.of(1.0, 0.7, 0.8, 0.4, 1.0));
        assertThat(count.byDepth(20).stream().filter(depth -> depth.halfCycles() > 0))
                .extracting(DepthClass::halfCycles)
                .containsExactly(2, 2);
        assertThat(count.deepestFraction()).isCloseTo(0.6, within(1e-12));
    }

    @Test
    void aSlowCreepIsHalfACycle() {
        CycleCount count = CycleCount.of(List.of(1.0, 0.9, 0.8, 0.5));
        assertThat(count.cycles()).containsExactly(new Cycle(0.5, 0.75, false));
        assertThat(CycleCount.of(List.of(0.8)).cycles()).isEmpty();
        assertThat(CycleCount.of(List.of(0.8, 0.8, 0.8)).cycles()).isEmpty();
        assertThat(CycleCount.of(List.of()).cycles()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void travelIsKeptAndPointsOnTheWayChangeNothing(long seed) {
        Random random = new Random(seed);
        List<Double> record = new ArrayList<>();
        List<Double> finer = new ArrayList<>();
        double travelled = 0;
        double value = 0.5;
        record.add(value);
        finer.add(value);
        for (int i = 0; i < 500; i++) {
            double next = random.nextDouble();
            travelled += Math.abs(next - value);
            finer.add(value + 0.3 * (next - value));
            finer.add(value + 0.8 * (next - value));
            record.add(next);
            finer.add(next);
            value = next;
        }
        CycleCount count = CycleCount.of(record);
        double counted = count.cycles().stream()
                .mapToDouble(cycle -> cycle.halfCycles() * cycle.depthFraction())
                .sum();
        assertThat(counted).isCloseTo(travelled, within(1e-9));
        assertThat(CycleCount.of(finer)).isEqualTo(count);
        double least = record.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double most = record.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        assertThat(count.deepestFraction()).isEqualTo(most - least);
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThatThrownBy(() -> CycleCount.of(List.of(1.0, Double.NaN)))
                .hasMessageContaining("stateOfChargeFraction is NaN");
    }
}

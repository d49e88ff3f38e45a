package curbwatt.charts.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BucketsTest {

    private record Row(double timeS, double valueV) {}

    @Test
    void extremesSurvive() {
        Random random = new Random(4);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < 20_000; i++) {
            rows.add(new Row(i, random.nextGaussian()));
        }
        rows.set(777, new Row(777, 40));
        rows.set(15_001, new Row(15_001, -40));
        double[][] line = new Buckets<>(rows, Row::timeS, 100).line(Row::valueV);

        assertThat(line[0]).hasSizeBetween(100, 400).isSorted();
        assertThat(line[1]).contains(40).contains(-40);
        assertThat(line[0][0]).isZero();
        assertThat(line[0][line[0].length - 1]).isEqualTo(19_999);
    }

    @Test
    void anUprightEdgeKeepsItsDirection() {
        List<Row> rows = List.of(new Row(0, 12.4), new Row(1, 12.4), new Row(1, 12.1), new Row(2, 12.1));

        assertThat(new Buckets<>(rows, Row::timeS, 1).line(Row::valueV)[1]).containsExactly(12.4, 12.1, 12.1);
        assertThat(new Buckets<>(rows, Row::timeS, 50).line(Row::valueV)[1]).containsExactly(12.4, 12.4, 12.1, 12.1);
    }

    @Test
    void noStretchRunsAcrossAJump() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i <= 100; i++) {
            rows.add(new Row(i, i <= 42 ? 10 : 0));
        }
        Buckets<Row> buckets = new Buckets<>(rows, Row::timeS, 10, List.of(42.2));

        assertThat(buckets.stretches())
                .allMatch(stretch ->
                        stretch.stream().mapToDouble(Row::valueV).distinct().count() == 1);
    }

    @Test
    void oneRowIsEnough() {
        double[][] line = new Buckets<>(List.of(new Row(0, 12)), Row::timeS, 10).line(Row::valueV);

        assertThat(Arrays.deepToString(line)).isEqualTo("[[0.0], [12.0]]");
    }
}

package curbwatt.charts.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Rows in order of time, gathered into at most so many stretches of equal length: a picture has only so many
 * columns, and a drawing that holds more points is heavy without showing more.
 *
 * @param <T> kind of row
 */
final class Buckets<T> {

    private final ToDoubleFunction<T> time;
    private final List<List<T>> stretches;

    /** Gathers the rows; {@code most} stretches at most. */
    Buckets(List<T> rows, ToDoubleFunction<T> time, int most) {
        this(rows, time, most, List.of());
    }

    /** Gathers the rows so that no stretch goes on past one of the times at which something jumps. */
    Buckets(List<T> rows, ToDoubleFunction<T> time, int most, List<Double> jumps) {
        this.time = time;
        List<List<T>> all = new ArrayList<>();
        if (!rows.isEmpty()) {
            double first = time.applyAsDouble(rows.get(0));
            double length = (time.applyAsDouble(rows.get(rows.size() - 1)) - first) / most;
            int last = -1;
            double before = first;
            for (T row : rows) {
                double at = time.applyAsDouble(row);
                int place = length > 0 ? (int) Math.min(most - 1.0, (at - first) / length) : 0;
                // A row stands for the time since the row before; the one that spans a jump goes where most of it
                // lies.
                double middle = 0.5 * (before + at);
                place += (int) jumps.stream().filter(jump -> jump < middle).count();
                before = at;
                if (place != last) {
                    all.add(new ArrayList<>());
                    last = place;
                }
                all.get(all.size() - 1).add(row);
            }
        }
        this.stretches = List.copyOf(all);
    }

    /** The stretches, none empty. */
    List<List<T>> stretches() {
        return stretches;
    }

    /** Times and values of a line that keeps first, lowest, highest and last of each stretch. */
    double[][] line(ToDoubleFunction<T> value) {
        List<T> kept = new ArrayList<>();
        for (List<T> stretch : stretches) {
            int low = 0;
            int high = 0;
            for (int i = 1; i < stretch.size(); i++) {
                double here = value.applyAsDouble(stretch.get(i));
                low = here < value.applyAsDouble(stretch.get(low)) ? i : low;
                high = here > value.applyAsDouble(stretch.get(high)) ? i : high;
            }
            // By place, not by time: an upright edge has two rows at one instant.
            IntStream.of(0, low, high, stretch.size() - 1).sorted().distinct().forEach(i -> kept.add(stretch.get(i)));
        }
        return new double[][] {
            kept.stream().mapToDouble(time).toArray(),
            kept.stream().mapToDouble(value).toArray()
        };
    }

    /** Start of each stretch, the end of the one before. */
    double startOf(int stretch) {
        List<T> rows = stretch == 0 ? stretches.get(0) : stretches.get(stretch - 1);
        return time.applyAsDouble(stretch == 0 ? rows.get(0) : rows.get(rows.size() - 1));
    }

    /** Last time of each stretch. */
    double endOf(int stretch) {
        List<T> rows = stretches.get(stretch);
        return time.applyAsDouble(rows.get(rows.size() - 1));
    }
}

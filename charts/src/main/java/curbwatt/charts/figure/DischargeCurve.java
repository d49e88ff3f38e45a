package curbwatt.charts.figure;

import java.util.List;
import java.util.Objects;

/**
 * A discharge as voltage against charge delivered.
 *
 * @param name what distinguishes it, such as its current
 * @param points at least two, in order of charge
 */
public record DischargeCurve(String name, List<Point> points) {

    /**
     * A point of a curve.
     *
     * @param deliveredAh charge delivered so far (Ah)
     * @param voltageV voltage at the terminals (V)
     */
    public record Point(double deliveredAh, double voltageV) {}

    /** Copies the points; refuses fewer than two. */
    public DischargeCurve {
        Objects.requireNonNull(name, "name");
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "points of curve '" + name + "' number " + points.size() + "; at least 2 are needed");
        }
    }

    /** The last point. */
    Point end() {
        return points.get(points.size() - 1);
    }
}

package curbwatt.engine.scene;

import curbwatt.engine.quantity.Require;
import java.util.List;

/**
 * Temperature of the air round battery and regulator through a phase: straight lines between points, constant before
 * the first and after the last.
 *
 * @param points temperature at times since the phase's start, times rising
 */
public record AirTemperature(List<Point> points) {

    /**
     * Temperature at a time.
     *
     * @param timeS time since the phase's start (s)
     * @param airC temperature (°C), −50 … 110
     */
    public record Point(double timeS, double airC) {
        /** Refuses a temperature out of range and a negative time. */
        public Point {
            Require.inside("airC", airC, -50, 110, "°C");
            Require.inside("timeS", timeS, 0, 1e9, "s");
        }
    }

    /** Refuses no point at all and times that do not rise. */
    public AirTemperature {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("air temperature has no point; at least one is needed");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).timeS() <= points.get(i - 1).timeS()) {
                throw new IllegalArgumentException(
                        "air temperature times must rise: " + points.get(i).timeS() + " s follows "
                                + points.get(i - 1).timeS() + " s");
            }
        }
    }

    /** The same temperature throughout. */
    public static AirTemperature constant(double airC) {
        return new AirTemperature(List.of(new Point(0, airC)));
    }

    /** Temperature at a time since the phase's start (°C). */
    public double atC(double timeS) {
        int last = points.size() - 1;
        int above = 0;
        while (above < last && points.get(above).timeS() < timeS) {
            above++;
        }
        Point after = points.get(above);
        if (above == 0 || timeS >= after.timeS()) {
            return after.airC();
        }
        Point before = points.get(above - 1);
        double share = (timeS - before.timeS()) / (after.timeS() - before.timeS());
        return before.airC() + share * (after.airC() - before.airC());
    }

    /** Next time at which the slope changes, after {@code timeS}; positive infinity if there is none (s). */
    public double nextPointS(double timeS) {
        // asked at every step: a stream would leave a handful of objects each time
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).timeS() > timeS) {
                return points.get(i).timeS();
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Highest temperature of all points (°C). */
    public double highestC() {
        return points.stream().mapToDouble(Point::airC).max().orElseThrow();
    }

    /** The same course, warmer throughout by so much (K). */
    public AirTemperature warmerBy(double shiftK) {
        return new AirTemperature(points.stream()
                .map(point -> new Point(point.timeS(), point.airC() + shiftK))
                .toList());
    }
}

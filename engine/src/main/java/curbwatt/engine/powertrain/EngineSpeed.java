package curbwatt.engine.powertrain;

import curbwatt.engine.quantity.Require;
import java.util.List;

/**
 * Engine speed through a phase: straight lines between points, constant before the first and after the last.
 *
 * @param points speed at times since the phase's start, times rising
 */
public record EngineSpeed(List<Point> points) {

    /**
     * Speed at a time.
     *
     * @param timeS time since the phase's start (s)
     * @param engineRpm engine speed (1/min), 0 … 8000
     */
    public record Point(double timeS, double engineRpm) {
        /** Refuses a speed out of range and a negative time. */
        public Point {
            Require.inside("engineRpm", engineRpm, 0, 8000, "/min");
            Require.inside("timeS", timeS, 0, 1e9, "s");
        }
    }

    /** Refuses no point at all and times that do not rise. */
    public EngineSpeed {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("engine speed has no point; at least one is needed");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).timeS() <= points.get(i - 1).timeS()) {
                throw new IllegalArgumentException(
                        "engine speed times must rise: " + points.get(i).timeS() + " s follows "
                                + points.get(i - 1).timeS() + " s");
            }
        }
    }

    /** The same speed throughout. */
    public static EngineSpeed constant(double engineRpm) {
        return new EngineSpeed(List.of(new Point(0, engineRpm)));
    }

    /** Engine speed at a time since the phase's start (1/min). */
    public double atRpm(double timeS) {
        Point before = points.get(0);
        if (timeS <= before.timeS()) {
            return before.engineRpm();
        }
        for (Point after : points.subList(1, points.size())) {
            if (timeS < after.timeS()) {
                double share = (timeS - before.timeS()) / (after.timeS() - before.timeS());
                return before.engineRpm() + share * (after.engineRpm() - before.engineRpm());
            }
            before = after;
        }
        return before.engineRpm();
    }

    /** Lowest speed of all points (1/min). */
    public double lowestRpm() {
        return points.stream().mapToDouble(Point::engineRpm).min().orElseThrow();
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
}

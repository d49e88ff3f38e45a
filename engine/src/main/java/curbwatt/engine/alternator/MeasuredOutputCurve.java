package curbwatt.engine.alternator;

import curbwatt.engine.numeric.MonotoneCubic;
import curbwatt.engine.quantity.Require;
import java.util.List;

/**
 * Output from a bench table, joined by a monotone cubic that never overshoots; constant above the last point.
 *
 * <p>Limits: below the first point nothing is known; the curve then delivers nothing, which errs on the safe side.
 */
public final class MeasuredOutputCurve implements OutputCurve {

    private final List<Point> points;
    private final MonotoneCubic curve;

    /**
     * Output at a shaft speed.
     *
     * @param shaftRpm shaft speed (1/min), 0 … 25000
     * @param outputA output (A), 0 … 1000
     */
    public record Point(double shaftRpm, double outputA) {
        /** Refuses figures out of range. */
        public Point {
            Require.inside("shaftRpm", shaftRpm, 0, 25000, "/min");
            Require.inside("outputA", outputA, 0, 1000, "A");
        }
    }

    /**
     * @param points at least two, speeds rising, outputs not falling
     * @throws IllegalArgumentException if they are not
     */
    public MeasuredOutputCurve(List<Point> points) {
        this.points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("table has " + points.size() + " points; at least two are needed");
        }
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point after = points.get(i);
            if (after.shaftRpm() <= before.shaftRpm() || after.outputA() < before.outputA()) {
                throw new IllegalArgumentException(
                        "table must rise: " + after.shaftRpm() + " /min with " + after.outputA() + " A follows "
                                + before.shaftRpm() + " /min with " + before.outputA() + " A");
            }
        }
        this.curve = new MonotoneCubic(
                points.stream().map(Point::shaftRpm).toList(),
                points.stream().map(Point::outputA).toList());
    }

    /** The table. */
    public List<Point> points() {
        return points;
    }

    @Override
    public double maximumA(double shaftRpm) {
        return shaftRpm < points.get(0).shaftRpm() ? 0 : curve.value(shaftRpm);
    }

    @Override
    public double cutInRpm() {
        return points.get(0).shaftRpm();
    }

    @Override
    public double trustedFromRpm() {
        return points.get(0).shaftRpm();
    }
}

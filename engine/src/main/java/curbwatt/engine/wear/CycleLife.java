package curbwatt.engine.wear;

import curbwatt.engine.quantity.Require;
import java.util.List;

/**
 * How many cycles of one depth a battery is said to last: straight between published points on logarithmic scales, and
 * outside them on with {@link #USUAL_EXPONENT}.
 *
 * <p>Published counts are orders of magnitude: at 50 % depth public figures for batteries sold for cycling are 370, 400
 * and 750. Hence a spread factor goes with every table, by our judgement 2 unless something better is known.
 *
 * @param points cycles at depths, depths rising, cycles falling
 * @param spreadFactor by how much the count may be wrong either way, 1 … 10
 */
public record CycleLife(List<Point> points, double spreadFactor) {

    /** Exponent of cycles in depth outside the points: that of the absorbed-mat table, 25 to 50 and 50 to 100 %. */
    public static final double USUAL_EXPONENT = 1.3;

    /** Spread where none is stated; our judgement. */
    public static final double USUAL_SPREAD_FACTOR = 2;

    /**
     * Cycles at a depth.
     *
     * @param depthFraction depth of discharge, 0.01 … 1
     * @param cycles how many, 1 … 100000
     */
    public record Point(double depthFraction, int cycles) {
        /** Refuses figures out of range. */
        public Point {
            Require.inside("depthFraction", depthFraction, 0.01, 1, "");
            Require.inside("cycles", cycles, 1, 100_000, "");
        }
    }

    /** Refuses no point, and points that do not fall. */
    public CycleLife {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("cycle life has no point; at least one is needed");
        }
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point after = points.get(i);
            if (after.depthFraction() <= before.depthFraction() || after.cycles() >= before.cycles()) {
                throw new IllegalArgumentException("cycle life must fall with depth: " + after.cycles() + " at "
                        + after.depthFraction() + " follows " + before.cycles() + " at " + before.depthFraction());
            }
        }
        Require.inside("spreadFactor", spreadFactor, 1, 10, "");
    }

    /** Absorbed mat: N. Calder's boat owner's manual, as quoted in a public forum. */
    public static CycleLife absorbedMat() {
        return new CycleLife(
                List.of(
                        new Point(0.10, 3100),
                        new Point(0.25, 925),
                        new Point(0.50, 370),
                        new Point(0.80, 200),
                        new Point(1.00, 150)),
                USUAL_SPREAD_FACTOR);
    }

    /** Flooded traction battery, as in golf carts: public figures of owners. */
    public static CycleLife floodedTraction() {
        return new CycleLife(List.of(new Point(0.50, 750), new Point(0.80, 225)), USUAL_SPREAD_FACTOR);
    }

    /** Flooded starter battery: 50 to 70 cycles at 30 %, a public figure; one point alone. */
    public static CycleLife floodedStarter() {
        return new CycleLife(List.of(new Point(0.30, 60)), USUAL_SPREAD_FACTOR);
    }

    /** Cycles of a depth until the battery is worn out; positive infinity at depth 0. */
    public double cyclesAt(double depthFraction) {
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        if (depthFraction <= first.depthFraction()) {
            return first.cycles() * Math.pow(first.depthFraction() / depthFraction, USUAL_EXPONENT);
        }
        if (depthFraction >= last.depthFraction()) {
            return last.cycles() * Math.pow(last.depthFraction() / depthFraction, USUAL_EXPONENT);
        }
        int above = 1;
        while (points.get(above).depthFraction() < depthFraction) {
            above++;
        }
        Point low = points.get(above - 1);
        Point high = points.get(above);
        double share =
                Math.log(depthFraction / low.depthFraction()) / Math.log(high.depthFraction() / low.depthFraction());
        return low.cycles() * Math.pow((double) high.cycles() / low.cycles(), share);
    }

    /** Share of life that cycles use up, each 1/cycles of its depth (Palmgren and Miner's rule). */
    public double wornFraction(CycleCount count) {
        return count.cycles().stream()
                .mapToDouble(cycle -> 0.5 * cycle.halfCycles() / cyclesAt(cycle.depthFraction()))
                .sum();
    }
}

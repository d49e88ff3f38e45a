package curbwatt.engine.study.size;

import java.util.List;
import java.util.Objects;

/**
 * How long the scene is held against the battery's size, in one set of conditions.
 *
 * @param conditions the conditions
 * @param points from the smallest battery to the largest
 */
public record HoldCurve(Conditions conditions, List<Point> points) {

    /**
     * One size.
     *
     * @param c20Ah 20 h capacity (Ah)
     * @param heldS time from the scene's start to the first loss (s)
     * @param toTheEnd whether nothing was lost at all, so that it might have been held longer
     */
    public record Point(double c20Ah, double heldS, boolean toTheEnd) {}

    /** Copies the list. */
    public HoldCurve {
        Objects.requireNonNull(conditions, "conditions");
        points = List.copyOf(points);
    }
}

package curbwatt.charts.figure;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Which parts of a picture are written on, so that no two labels lie over each other. */
final class LabelSpace {

    private static final double BESIDE_PX = 4;
    private static final double ABOVE_BASE = 0.95;
    private static final double BELOW_BASE = 0.3;

    private final List<Rectangle2D> taken = new ArrayList<>();

    /** What a line of text takes, with a little room round it. */
    static Rectangle2D box(String text, Font font, double leftPx, double basePx) {
        return new Rectangle2D.Double(
                leftPx - BESIDE_PX,
                basePx - ABOVE_BASE * font.getSize2D(),
                Pen.width(text, font) + 2 * BESIDE_PX,
                (ABOVE_BASE + BELOW_BASE) * font.getSize2D());
    }

    /** Whether nothing stands there yet. */
    boolean isFree(Rectangle2D box) {
        return taken.stream().noneMatch(box::intersects);
    }

    /** Notes that something stands there now. */
    void take(Rectangle2D box) {
        taken.add(box);
    }
}

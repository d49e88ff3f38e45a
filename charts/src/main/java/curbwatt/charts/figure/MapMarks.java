package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.study.settings.CoarseRange;
import curbwatt.engine.study.settings.Recommendation;
import curbwatt.engine.study.settings.SettingsMap;
import curbwatt.engine.study.settings.SettingsResult;
import curbwatt.engine.study.settings.TripSetting;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The settings that a map points out: the recommended one with what lies round it, and the one that the vehicle has.
 *
 * @param result what was found
 * @param rule which rule of closing
 * @param ground where they are drawn
 */
record MapMarks(SettingsResult result, int rule, MapGround ground) {

    private static final BasicStroke RING = new BasicStroke(2.4f);
    private static final BasicStroke RING_GROUND = new BasicStroke(5);
    private static final BasicStroke RANGE =
            new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {6, 3}, 0);
    private static final double PRESENT_RADIUS = 6;
    private static final double ABOVE = 9;
    private static final double BELOW = 19;

    /** Draws them, each with its words, and notes where they stand. */
    void draw(Pen pen, String recommended, String present, LabelSpace space) {
        Optional<Recommendation> advice =
                result.recommendation().filter(found -> found.cell().rule() == rule);
        advice.ifPresent(found -> range(pen, found.range()));
        Optional<Rectangle2D> ring = advice.map(Recommendation::cell)
                .map(cell -> ground.box(cell.level(), cell.level(), cell.delay(), cell.delay()));
        ring.ifPresent(box -> outline(pen, box, Palette.ALARM.color()));
        ring.ifPresent(space::take);
        Optional<Rectangle2D> own = present().map(MapMarks::round);
        own.ifPresent(space::take);
        ring.ifPresent(box -> label(pen, recommended, Palette.ALARM.color(), box, space));
        own.ifPresent(box -> {
            outline(
                    pen,
                    new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight()),
                    Palette.INK.color());
            label(pen, present, Palette.INK.color(), box, space);
        });
    }

    private static void outline(Pen pen, Shape shape, Color color) {
        pen.outline(shape, Palette.PAPER.color(), RING_GROUND);
        pen.outline(shape, color, RING);
    }

    private static Rectangle2D round(Point2D at) {
        return new Rectangle2D.Double(
                at.getX() - PRESENT_RADIUS, at.getY() - PRESENT_RADIUS, 2 * PRESENT_RADIUS, 2 * PRESENT_RADIUS);
    }

    /** Where the vehicle's own setting lies; empty: not in this map. */
    Optional<Point2D> present() {
        TripSetting setting = result.present();
        SettingsMap map = result.map();
        OptionalDouble level = place(map.tripLevelsV(), setting.tripV());
        OptionalDouble delay = place(map.tripDelaysS(), setting.tripDelayS());
        return map.recloses().get(rule).equals(setting.reclose()) && level.isPresent() && delay.isPresent()
                ? Optional.of(new Point2D.Double(ground.x(level.getAsDouble()), ground.y(delay.getAsDouble())))
                : Optional.empty();
    }

    /** Place of a value among rising ones, straight between neighbours; empty: outside. */
    private static OptionalDouble place(List<Double> values, double value) {
        for (int i = 0; i < values.size(); i++) {
            double to = values.get(i);
            if (value == to) {
                return OptionalDouble.of(i);
            }
            if (value < to) {
                double from = i == 0 ? to : values.get(i - 1);
                return i == 0 ? OptionalDouble.empty() : OptionalDouble.of(i - 1 + (value - from) / (to - from));
            }
        }
        return OptionalDouble.empty();
    }

    private void range(Pen pen, CoarseRange range) {
        SettingsMap map = result.map();
        Rectangle2D box = ground.box(
                map.tripLevelsV().indexOf(range.leastV()),
                map.tripLevelsV().indexOf(range.mostV()),
                map.tripDelaysS().indexOf(range.leastS()),
                map.tripDelaysS().indexOf(range.mostS()));
        pen.outline(box, Palette.PAPER.color(), HouseStyle.STRONG_LINE);
        pen.outline(box, Palette.INK.color(), RANGE);
    }

    /** Writes above a mark where there is room, else below it. */
    private void label(Pen pen, String text, Color color, Rectangle2D mark, LabelSpace space) {
        Font font = Typeface.prepare().strong(HouseStyle.TEXT);
        Rectangle2D area = ground.panel().area();
        double width = Pen.width(text, font);
        double left = mark.getX() + width < area.getMaxX() ? mark.getX() : mark.getMaxX() - width;
        Rectangle2D above = LabelSpace.box(text, font, left, mark.getY() - ABOVE);
        boolean isAbove = above.getY() > area.getY() && space.isFree(above);
        double base = isAbove ? mark.getY() - ABOVE : mark.getMaxY() + BELOW;
        space.take(LabelSpace.box(text, font, left, base));
        pen.textOnPaper(text, font, color, left, base, Pen.Anchor.LEFT);
    }
}

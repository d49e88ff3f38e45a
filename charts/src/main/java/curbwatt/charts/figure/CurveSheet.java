package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.Range;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * Curves of one quantity against another, with a level, marks, and each curve's name beside its right end.
 *
 * @param name of the picture
 * @param caption the words above it
 * @param alternativeText for a reader who can't see it
 * @param across axis along the lower edge
 * @param upright axis along the left edge
 * @param curves the curves
 * @param levels broken lines across, each with its name at the left
 * @param marks upright lines, each with its name on top
 */
record CurveSheet(
        String name,
        Caption caption,
        String alternativeText,
        Scale across,
        Scale upright,
        List<Curve> curves,
        List<Mark> levels,
        List<Mark> marks) {

    private static final int WIDTH = 960;
    private static final int PLOT_HEIGHT = 380;
    private static final int LANE_HEIGHT = 16;
    private static final int MOST_LANES = 6;

    /** An axis: its label and what it shows. */
    record Scale(String label, Range range) {}

    /** A curve by its points, the first list rising. */
    record Curve(String label, Color color, Stroke stroke, List<Double> across, List<Double> upright) {
        Curve {
            across = List.copyOf(across);
            upright = List.copyOf(upright);
        }
    }

    /** A value worth a line; strong ones are drawn whole. */
    record Mark(String label, Number at, Color color, boolean strong) {}

    CurveSheet {
        curves = List.copyOf(curves);
        levels = List.copyOf(levels);
        marks = List.copyOf(marks);
    }

    Picture picture() {
        Head head = new Head(caption, List.of(), WIDTH);
        int right = SideLabels.room(curves.stream().map(Curve::label).toList(), 60, 240);
        List<LabelLanes.Place> places = places(right);
        int lanes = places.stream().mapToInt(place -> place.lane() + 1).max().orElse(0);
        int top = head.height() + 6 + lanes * LANE_HEIGHT;
        int height = top + PLOT_HEIGHT + HouseStyle.BELOW + 8;
        XYPlot plot = plot();
        plot.setInsets(new RectangleInsets(top, 0, 8, right));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(plot), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    Panel panel = panels.get(0);
                    levels.forEach(level -> level(pen, panel, level));
                    places.forEach(place -> mark(pen, panel, place, head.height() + 6));
                    SideLabels.write(
                            pen,
                            panel,
                            curves.stream().map(curve -> end(panel, curve)).toList(),
                            right);
                });
        return new Sheet(name, caption, alternativeText, WIDTH, height, drawing);
    }

    private XYPlot plot() {
        NumberAxis side = HouseStyle.upright(upright.label(), Palette.INK.color());
        HouseStyle.ticks(side, upright.range().getLowerBound(), upright.range().getUpperBound(), 8, "0");
        NumberAxis foot = HouseStyle.across(across.label());
        HouseStyle.ticks(foot, across.range().getLowerBound(), across.range().getUpperBound(), 12, "0");
        XYPlot plot = HouseStyle.plot(foot, side);
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            DefaultXYDataset dataset = new DefaultXYDataset();
            dataset.addSeries("curve", new double[][] {
                curve.across().stream().mapToDouble(Double::doubleValue).toArray(),
                curve.upright().stream().mapToDouble(Double::doubleValue).toArray()
            });
            plot.setDataset(i, dataset);
            plot.setRenderer(i, HouseStyle.line(curve.color(), curve.stroke()));
        }
        return plot;
    }

    private static Font font() {
        return Typeface.prepare().regular(HouseStyle.SMALL);
    }

    private List<LabelLanes.Place> places(int right) {
        double plotWidth = WIDTH - right - HouseStyle.LEFT;
        List<LabelLanes.Wish> wishes = new ArrayList<>();
        for (Mark mark : marks) {
            double share = (mark.at().doubleValue() - across.range().getLowerBound())
                    / across.range().getLength();
            wishes.add(new LabelLanes.Wish(HouseStyle.LEFT + plotWidth * share, Pen.width(mark.label(), font())));
        }
        return LabelLanes.places(wishes, HouseStyle.LEFT, WIDTH - 8, MOST_LANES);
    }

    private void mark(Pen pen, Panel panel, LabelLanes.Place place, double fromPx) {
        Mark mark = marks.get(place.index());
        double x = panel.x(mark.at().doubleValue());
        double base = fromPx + (place.lane() + 0.75) * LANE_HEIGHT;
        pen.line(
                x,
                base - 8,
                x,
                mark.strong() ? panel.area().getMaxY() : panel.area().getY() + 12,
                mark.color(),
                mark.strong() ? HouseStyle.MAIN_LINE : HouseStyle.THIN_LINE);
        pen.text(mark.label(), font(), mark.color(), place.fromPx(), base, Pen.Anchor.LEFT);
    }

    private void level(Pen pen, Panel panel, Mark level) {
        double y = panel.y(level.at().doubleValue());
        pen.line(panel.area().getX(), y, panel.area().getMaxX(), y, level.color(), HouseStyle.LEVEL_LINE);
        Point2D place = new LevelPlace(panel, curves).of(Pen.width(level.label(), font()), y);
        pen.textOnPaper(level.label(), font(), level.color(), place.getX(), place.getY(), Pen.Anchor.LEFT);
    }

    /** The name stands where the curve ends, or at the upper edge if it leaves the picture there. */
    private static SideLabels.Label end(Panel panel, Curve curve) {
        int last = IntStream.range(0, curve.across().size())
                .filter(i -> panel.across().getRange().contains(curve.across().get(i)))
                .max()
                .orElse(0);
        return new SideLabels.Label(curve.label(), panel.yInside(curve.upright().get(last)), curve.color(), false);
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/** A few curves over one quantity, each named at its end, and how things are today. */
public final class CurvesFigure {

    private static final int ABOVE = 6;
    private static final int LEAST_RIGHT = 120;
    private static final int MOST_RIGHT = 260;
    private static final int PLOT_HEIGHT = 320;
    private static final double CROSS = 4;

    /**
     * A point of a curve.
     *
     * @param across its value along the lower axis
     * @param upright its value along the left axis
     * @param mark how it is marked
     */
    public record Point(Number across, Number upright, Mark mark) {
        double acrossValue() {
            return across.doubleValue();
        }

        double uprightValue() {
            return upright.doubleValue();
        }
    }

    /** How a point is marked. */
    public enum Mark {
        /** Not at all. */
        NONE,
        /** It is good. */
        DOT,
        /** It is not. */
        CROSS
    }

    /**
     * A curve.
     *
     * @param name written at its end
     * @param place place of its colour and dashes among those of compared runs
     * @param points from the left
     */
    public record Curve(String name, int place, List<Point> points) {
        /** Copies the list. */
        public Curve {
            points = List.copyOf(points);
        }
    }

    /**
     * What is drawn.
     *
     * @param name file name of the picture
     * @param acrossLabel label of the lower axis, with its unit
     * @param uprightLabel label of the left axis, with its unit
     * @param acrossRange from where to where the lower axis goes
     * @param uprightRange from where to where the left axis goes
     * @param curves the curves
     * @param today how things are now, if that is a point of the picture; otherwise a line at its place across
     */
    public record Content(
            String name,
            String acrossLabel,
            String uprightLabel,
            List<Double> acrossRange,
            List<Double> uprightRange,
            List<Curve> curves,
            Optional<Point> today) {
        /** Copies the lists. */
        public Content {
            acrossRange = List.copyOf(acrossRange);
            uprightRange = List.copyOf(uprightRange);
            curves = List.copyOf(curves);
        }
    }

    private final Content content;
    private final int right;

    private CurvesFigure(Content content) {
        this.content = content;
        this.right = SideLabels.room(content.curves().stream().map(Curve::name).toList(), LEAST_RIGHT, MOST_RIGHT);
    }

    /** The picture. */
    public static Picture of(Content content, Caption caption) {
        return new CurvesFigure(content).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, keys(), OnePanel.WIDTH);
        return new OnePanel(head, ABOVE, PLOT_HEIGHT, right)
                .sheet(content.name(), caption, alternativeText(), plot(), (pen, panels) -> write(pen, panels.get(0)));
    }

    private List<Head.Key> keys() {
        return content.curves().stream()
                .map(curve -> Head.Key.line(
                        curve.name(), Palette.compared(curve.place()), HouseStyle.comparedLine(curve.place())))
                .toList();
    }

    private XYPlot plot() {
        NumberAxis across = HouseStyle.across(content.acrossLabel());
        HouseStyle.ticks(
                across, content.acrossRange().get(0), content.acrossRange().get(1), 10, "0");
        NumberAxis upright = HouseStyle.upright(content.uprightLabel(), Palette.INK.color());
        HouseStyle.ticks(
                upright, content.uprightRange().get(0), content.uprightRange().get(1), 7, "0");
        XYPlot plot = HouseStyle.plot(across, upright);
        for (int i = 0; i < content.curves().size(); i++) {
            Curve curve = content.curves().get(i);
            DefaultXYDataset dataset = new DefaultXYDataset();
            dataset.addSeries("line", new double[][] {
                curve.points().stream().mapToDouble(Point::acrossValue).toArray(),
                curve.points().stream().mapToDouble(Point::uprightValue).toArray()
            });
            plot.setDataset(i, dataset);
            plot.setRenderer(
                    i, HouseStyle.line(Palette.compared(curve.place()), HouseStyle.comparedLine(curve.place())));
        }
        return plot;
    }

    private void write(Pen pen, Panel panel) {
        content.today().ifPresent(today -> writeToday(pen, panel, today));
        List<SideLabels.Label> labels = new ArrayList<>();
        for (Curve curve : content.curves()) {
            curve.points().forEach(point -> mark(pen, panel, point, curve.place()));
            shown(curve, panel)
                    .ifPresent(last -> labels.add(new SideLabels.Label(
                            curve.name(), panel.yInside(last.uprightValue()), Palette.compared(curve.place()), true)));
        }
        SideLabels.write(pen, panel, labels, right);
    }

    /** The last point that the panel shows. */
    private static Optional<Point> shown(Curve curve, Panel panel) {
        return IntStream.iterate(curve.points().size() - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(curve.points()::get)
                .filter(point -> panel.shows(point.uprightValue()))
                .findFirst();
    }

    private static void mark(Pen pen, Panel panel, Point point, int place) {
        double x = panel.x(point.acrossValue());
        double y = panel.yInside(point.uprightValue());
        if (point.mark() == Mark.DOT) {
            pen.dot(x, y, Palette.compared(place));
        } else if (point.mark() == Mark.CROSS) {
            pen.line(x - CROSS, y - CROSS, x + CROSS, y + CROSS, Palette.compared(place), HouseStyle.MAIN_LINE);
            pen.line(x - CROSS, y + CROSS, x + CROSS, y - CROSS, Palette.compared(place), HouseStyle.MAIN_LINE);
        }
    }

    private static void writeToday(Pen pen, Panel panel, Point today) {
        double x = panel.x(today.acrossValue());
        pen.line(x, panel.area().getY(), x, panel.area().getMaxY(), Palette.MUTED.color(), HouseStyle.LEVEL_LINE);
        boolean leftHalf = x < panel.area().getCenterX();
        double y = today.mark() == Mark.NONE ? panel.area().getY() + 12 : panel.y(today.uprightValue()) - 8;
        if (today.mark() != Mark.NONE) {
            pen.dot(x, panel.y(today.uprightValue()), Palette.INK.color());
        }
        pen.textOnPaper(
                "today",
                Typeface.prepare().strong(HouseStyle.SMALL),
                Palette.INK.color(),
                leftHalf ? x + 6 : x - 6,
                y,
                leftHalf ? Pen.Anchor.LEFT : Pen.Anchor.RIGHT);
    }

    private String alternativeText() {
        return content.uprightLabel() + " over " + content.acrossLabel().toLowerCase(Locale.ROOT) + ". "
                + content.curves().stream().map(CurvesFigure::inWords).collect(Collectors.joining(" "));
    }

    private static String inWords(Curve curve) {
        if (curve.points().isEmpty()) {
            return curve.name() + ": nothing in range.";
        }
        Point first = curve.points().get(0);
        Point last = curve.points().get(curve.points().size() - 1);
        return String.format(
                Locale.ROOT,
                "%s: from %.3g at %.3g to %.3g at %.3g.",
                curve.name(),
                first.uprightValue(),
                first.acrossValue(),
                last.uprightValue(),
                last.acrossValue());
    }
}

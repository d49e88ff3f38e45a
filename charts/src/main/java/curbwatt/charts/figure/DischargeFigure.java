package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** Voltage against charge delivered for several currents of one battery. */
public final class DischargeFigure {

    private static final int WIDTH = 960;
    private static final int RIGHT = 132;
    private static final int PLOT_HEIGHT = 360;
    private static final int LANE_HEIGHT = 16;
    private static final int MOST_LANES = 8;
    private static final int COLUMNS = 200;

    private final List<DischargeCurve> curves;
    private final double mostAh;

    private DischargeFigure(List<DischargeCurve> curves) {
        if (curves.isEmpty()) {
            throw new IllegalArgumentException("curves is empty; at least one is needed");
        }
        this.curves = curves.stream()
                .sorted(Comparator.comparing(
                        (DischargeCurve curve) -> curve.end().deliveredAh()))
                .toList();
        this.mostAh = 1.04 * this.curves.get(curves.size() - 1).end().deliveredAh();
    }

    /**
     * The picture {@code discharge}.
     *
     * @param curves at least one
     * @param caption the words above it
     */
    public static Picture of(List<DischargeCurve> curves, Caption caption) {
        return new DischargeFigure(curves).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, List.of(), WIDTH);
        List<LabelLanes.Place> places = places();
        int lanes = places.stream().mapToInt(LabelLanes.Place::lane).max().orElse(0) + 1;
        int top = head.height() + 6;
        int height = top + PLOT_HEIGHT + lanes * LANE_HEIGHT + HouseStyle.BELOW + 8;
        XYPlot plot = plot(lanes);
        plot.setInsets(new RectangleInsets(top, 0, 8, RIGHT));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(plot), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    places.forEach(place -> writeEnd(pen, panels.get(0), place));
                });
        return new Sheet("discharge", caption, alternativeText(), WIDTH, height, drawing);
    }

    private XYPlot plot(int lanes) {
        NumberAxis upright = HouseStyle.upright("Voltage, V", Palette.INK.color());
        double lowest = extreme(-1);
        double highest = extreme(1);
        double pad = 0.05 * Math.max(0.5, highest - lowest);
        // The labels hang below the ends of the curves, where nothing else is.
        double labels = (highest - lowest + 2 * pad) * (lanes * LANE_HEIGHT + 10.0) / PLOT_HEIGHT;
        HouseStyle.ticks(upright, lowest - pad - labels, highest + pad, 8, "0");
        NumberAxis across = HouseStyle.across("Charge delivered, Ah");
        HouseStyle.ticks(across, 0, mostAh, 12, "0");
        XYPlot plot = HouseStyle.plot(across, upright);
        for (int i = 0; i < curves.size(); i++) {
            Buckets<DischargeCurve.Point> buckets =
                    new Buckets<>(curves.get(i).points(), DischargeCurve.Point::deliveredAh, COLUMNS);
            DefaultXYDataset dataset = new DefaultXYDataset();
            dataset.addSeries("curve", buckets.line(DischargeCurve.Point::voltageV));
            plot.setDataset(i, dataset);
            plot.setRenderer(i, HouseStyle.line(color(i), HouseStyle.MAIN_LINE));
        }
        return plot;
    }

    private List<LabelLanes.Place> places() {
        List<LabelLanes.Wish> wishes = new ArrayList<>();
        double plotWidth = WIDTH - RIGHT - HouseStyle.LEFT;
        for (DischargeCurve curve : curves) {
            wishes.add(new LabelLanes.Wish(
                    HouseStyle.LEFT + plotWidth * curve.end().deliveredAh() / mostAh, Pen.width(label(curve), font())));
        }
        return LabelLanes.places(wishes, HouseStyle.LEFT, WIDTH - 8, MOST_LANES);
    }

    private void writeEnd(Pen pen, Panel panel, LabelLanes.Place place) {
        DischargeCurve curve = curves.get(place.index());
        double x = panel.x(curve.end().deliveredAh());
        double y = panel.y(curve.end().voltageV());
        // Lane 0 is the farthest from the curve's end, so that no line runs through a label.
        double base = panel.area().getMaxY() - 8 - place.lane() * LANE_HEIGHT;
        pen.line(x, y, x, base + 2, color(place.index()), HouseStyle.THIN_LINE);
        pen.dot(x, y, color(place.index()));
        pen.text(label(curve), font(), color(place.index()), place.fromPx(), base, Pen.Anchor.LEFT);
    }

    private static Font font() {
        return Typeface.prepare().strong(HouseStyle.SMALL);
    }

    private static String label(DischargeCurve curve) {
        return curve.name()
                + String.format(Locale.ROOT, ", %.1f Ah", curve.end().deliveredAh());
    }

    /** One quantity, so one hue: the slower a discharge, the darker its line. */
    private Color color(int place) {
        double share = curves.size() == 1 ? 1 : place / (curves.size() - 1.0);
        return mixed(Palette.BATTERY_PALE.color(), Palette.BATTERY_DEEP.color(), share);
    }

    private static Color mixed(Color from, Color to, double share) {
        return new Color(
                mixed(from.getRed(), to.getRed(), share),
                mixed(from.getGreen(), to.getGreen(), share),
                mixed(from.getBlue(), to.getBlue(), share));
    }

    private static int mixed(int from, int to, double share) {
        return (int) Math.round(from + share * (to - from));
    }

    private double extreme(int sign) {
        return sign
                * curves.stream()
                        .flatMap(curve -> curve.points().stream())
                        .mapToDouble(point -> sign * point.voltageV())
                        .max()
                        .orElseThrow();
    }

    private String alternativeText() {
        return "Voltage against charge delivered. "
                + curves.stream()
                        .map(curve -> label(curve)
                                + String.format(
                                        Locale.ROOT, " to %.2f V", curve.end().voltageV()))
                        .collect(Collectors.joining("; "))
                + ".";
    }
}

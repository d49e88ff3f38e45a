package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.vehicle.Vehicle;
import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYAreaRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** A few flash cycles close up: how far the voltage sags, and how near the trip level that comes. */
public final class FlashFigure {

    private static final int WIDTH = 960;
    private static final int RIGHT = 168;
    private static final int VOLTAGE_HEIGHT = 270;
    private static final int LOAD_HEIGHT = 110;
    private static final int GAP = 14;
    private static final int COLUMNS = 400;

    /** A trip level farther away than this many times the range of the voltages would flatten them. */
    private static final double NEAR_FACTOR = 4;

    private final Vehicle vehicle;
    private final TimeScale scale;
    private final List<WaveformPoint> points;
    private final Buckets<WaveformPoint> buckets;
    private final double startS;
    private final double lowV;
    private final double highV;

    private FlashFigure(RunStory story) {
        this.vehicle = story.scenario().vehicle();
        this.scale = TimeScale.of(story.result().durationS());
        this.points = story.waveform();
        this.buckets = new Buckets<>(points, WaveformPoint::timeS, COLUMNS);
        this.startS = points.get(0).timeS();
        this.lowV = points.stream().mapToDouble(WaveformPoint::nodeV).min().orElseThrow();
        this.highV = points.stream().mapToDouble(WaveformPoint::nodeV).max().orElseThrow();
    }

    /**
     * The picture {@code flash}; empty if nothing flashes.
     *
     * @param story a run
     * @param caption the words above it
     */
    public static Optional<Picture> of(RunStory story, Caption caption) {
        return story.waveform().size() < 2 ? Optional.empty() : Optional.of(new FlashFigure(story).sheet(caption));
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, keys(), WIDTH);
        int top = head.height() + 6;
        int height = top + VOLTAGE_HEIGHT + GAP + LOAD_HEIGHT + HouseStyle.BELOW + 8;
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(timeAxis());
        both.setGap(GAP);
        both.add(voltagePlot(), VOLTAGE_HEIGHT);
        both.add(loadPlot(), LOAD_HEIGHT);
        both.setInsets(new RectangleInsets(top, 0, 8, RIGHT));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(both), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    writeVoltage(pen, panels.get(0));
                    writeLoad(pen, panels.get(1));
                });
        return new Sheet("flash", caption, alternativeText(), WIDTH, height, drawing);
    }

    private NumberAxis timeAxis() {
        NumberAxis axis = HouseStyle.across("Time after " + scale.clock(startS) + ", ms");
        HouseStyle.ticks(axis, 0, milliseconds(points.get(points.size() - 1)), 12, "0");
        return axis;
    }

    private XYPlot voltagePlot() {
        double from = lowV;
        double to = highV;
        if (sensesAtFeedEnd()) {
            from = Math.min(from, lowest(WaveformPoint::sensedV));
        }
        if (cutoff().isPresent()) {
            from = Math.min(from, lowest(WaveformPoint::readingV));
            to = Math.max(
                    to,
                    points.stream().mapToDouble(WaveformPoint::readingV).max().orElseThrow());
            double tripV = cutoff().get().tripV();
            double near = NEAR_FACTOR * Math.max(0.05, to - from);
            if (tripV > from - near && tripV < to + near) {
                from = Math.min(from, tripV);
                to = Math.max(to, tripV);
            }
        }
        double pad = Math.max(0.01, 0.1 * (to - from));
        NumberAxis axis = HouseStyle.upright("Voltage, V", Palette.VOLTAGE.color());
        HouseStyle.ticks(axis, from - pad, to + pad, 7, "0");
        XYPlot plot = HouseStyle.plot(null, axis);
        int layer = 0;
        if (sensesAtFeedEnd()) {
            layer = add(plot, layer, WaveformPoint::sensedV, Palette.SENSED.color(), HouseStyle.SIDE_LINE);
        }
        if (cutoff().isPresent()) {
            layer = add(plot, layer, WaveformPoint::readingV, Palette.SENSED.color(), HouseStyle.DOTTED_LINE);
        }
        add(plot, layer, WaveformPoint::nodeV, Palette.VOLTAGE.color(), HouseStyle.MAIN_LINE);
        return plot;
    }

    private XYPlot loadPlot() {
        NumberAxis axis = HouseStyle.upright("Load, A", Palette.INK.color());
        HouseStyle.ticks(axis, 0, 1.15 * Math.max(1, mostA()), 4, "0");
        XYPlot plot = HouseStyle.plot(null, axis);
        plot.setDataset(dataset(WaveformPoint::loadA));
        XYAreaRenderer renderer = new XYAreaRenderer(XYAreaRenderer.AREA);
        renderer.setSeriesPaint(0, Palette.LOAD.color());
        plot.setRenderer(renderer);
        return plot;
    }

    private int add(XYPlot plot, int layer, ToDoubleFunction<WaveformPoint> value, Color color, Stroke stroke) {
        plot.setDataset(layer, dataset(value));
        plot.setRenderer(layer, HouseStyle.line(color, stroke));
        return layer + 1;
    }

    private DefaultXYDataset dataset(ToDoubleFunction<WaveformPoint> value) {
        double[][] line = buckets.line(value);
        for (int i = 0; i < line[0].length; i++) {
            line[0][i] = 1000 * (line[0][i] - startS);
        }
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("waveform", line);
        return dataset;
    }

    private void writeVoltage(Pen pen, Panel panel) {
        List<SideLabels.Label> labels = new ArrayList<>();
        cutoff().ifPresent(cutoff -> labels.addAll(Levels.draw(
                pen,
                panel,
                List.of(new Levels.Level(
                        "trip " + Levels.volts(cutoff.tripV()),
                        cutoff.tripV(),
                        Palette.ALARM.color(),
                        HouseStyle.SIDE_LINE)))));
        labels.add(label(panel, "highest ", highV, Palette.VOLTAGE.color()));
        labels.add(label(panel, "lowest ", lowV, Palette.VOLTAGE.color()));
        if (sensesAtFeedEnd()) {
            labels.add(label(panel, "lowest sensed ", lowest(WaveformPoint::sensedV), Palette.SENSED.color()));
        }
        labels.add(new SideLabels.Label(sag(), (panel.y(highV) + panel.y(lowV)) / 2, Palette.INK.color(), true));
        SideLabels.write(pen, panel, labels, RIGHT);
        measure(pen, panel.area().getMaxX() - 7, panel.y(highV), panel.y(lowV));
    }

    /** A measure between two heights. */
    private static void measure(Pen pen, double x, double top, double bottom) {
        Color color = Palette.INK.color();
        pen.line(x, top, x, bottom, color, HouseStyle.SIDE_LINE);
        pen.line(x - 4, top, x + 4, top, color, HouseStyle.SIDE_LINE);
        pen.line(x - 4, bottom, x + 4, bottom, color, HouseStyle.SIDE_LINE);
    }

    private void writeLoad(Pen pen, Panel panel) {
        double leastA = lowest(WaveformPoint::loadA);
        SideLabels.write(
                pen,
                panel,
                List.of(
                        new SideLabels.Label(amperes("peak", mostA()), panel.y(mostA()), Palette.INK.color(), true),
                        new SideLabels.Label(amperes("least", leastA), panel.y(leastA), Palette.INK.color(), false)),
                RIGHT);
    }

    private static SideLabels.Label label(Panel panel, String what, double voltageV, Color color) {
        return new SideLabels.Label(what + Levels.volts(voltageV), panel.yInside(voltageV), color, true);
    }

    private List<Head.Key> keys() {
        List<Head.Key> keys = new ArrayList<>();
        keys.add(Head.Key.line("Battery node", Palette.VOLTAGE.color(), HouseStyle.MAIN_LINE));
        cutoff().ifPresent(cutoff -> {
            if (cutoff.sense() instanceof SensePoint.FeedEnd end) {
                keys.add(Head.Key.line(
                        "sensed at the end of " + end.circuit(), Palette.SENSED.color(), HouseStyle.SIDE_LINE));
            }
            keys.add(Head.Key.line(
                    "reading of " + cutoff.name() + " after its filter",
                    Palette.SENSED.color(),
                    HouseStyle.DOTTED_LINE));
        });
        return keys;
    }

    private Optional<LowVoltageCutoff> cutoff() {
        return vehicle.cutoffs().stream().findFirst();
    }

    private boolean sensesAtFeedEnd() {
        return cutoff().filter(cutoff -> cutoff.sense() instanceof SensePoint.FeedEnd)
                .isPresent();
    }

    private double lowest(ToDoubleFunction<WaveformPoint> value) {
        return points.stream().mapToDouble(value).min().orElseThrow();
    }

    private double mostA() {
        return points.stream().mapToDouble(WaveformPoint::loadA).max().orElseThrow();
    }

    private double milliseconds(WaveformPoint point) {
        return 1000 * (point.timeS() - startS);
    }

    private String sag() {
        return String.format(Locale.ROOT, "sag %.0f mV", 1000 * (highV - lowV));
    }

    private static String amperes(String what, double currentA) {
        return String.format(Locale.ROOT, "%s %.1f A", what, currentA);
    }

    private String alternativeText() {
        return String.format(
                Locale.ROOT,
                "A few flash cycles at %s. The battery node moves between %s and %s, %s; load current between %.1f and"
                        + " %.1f A.",
                scale.clock(startS),
                Levels.volts(lowV),
                Levels.volts(highV),
                sag(),
                lowest(WaveformPoint::loadA),
                mostA());
    }
}

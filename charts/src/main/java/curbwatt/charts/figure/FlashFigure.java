package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.result.WaveformPoint;
import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
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
    private static final int LEAST_RIGHT = 168;
    private static final int MOST_RIGHT = 260;
    private static final int VOLTAGE_HEIGHT = 270;
    private static final int LOAD_HEIGHT = 110;
    private static final int GAP = 14;
    private static final int COLUMNS = 1500;

    /** A trip level farther away than this many times the range of the voltages would flatten them. */
    private static final double NEAR_FACTOR = 4;

    /** A smaller range would show the solver's last digits (V). */
    private static final double LEAST_RANGE_V = 0.2;

    /** A smaller sag is none (V). */
    private static final double STEADY_V = 0.001;

    private final TimeScale scale;
    private final FlashWindow window;
    private final int right;
    private final Buckets<WaveformPoint> buckets;

    private FlashFigure(RunStory story) {
        this.scale = TimeScale.of(story.result().durationS());
        this.window = new FlashWindow(story);
        this.buckets = new Buckets<>(window.points(), WaveformPoint::timeS, COLUMNS);
        this.right =
                SideLabels.room(window.trips().stream().map(Levels.Level::name).toList(), LEAST_RIGHT, MOST_RIGHT);
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
        int top = head.height() + (window.tripS().isPresent() ? 22 : 6);
        int height = top + VOLTAGE_HEIGHT + GAP + LOAD_HEIGHT + HouseStyle.BELOW + 8;
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(timeAxis());
        both.setGap(GAP);
        both.add(voltagePlot(), VOLTAGE_HEIGHT);
        both.add(loadPlot(), LOAD_HEIGHT);
        both.setInsets(new RectangleInsets(top, 0, 8, right));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(both), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    writeTrip(pen, panels);
                    writeVoltage(pen, panels.get(0));
                    writeLoad(pen, panels.get(1));
                });
        return new Sheet("flash", caption, alternativeText(), WIDTH, height, drawing);
    }

    private NumberAxis timeAxis() {
        NumberAxis axis = HouseStyle.across("Time after " + scale.clock(window.startS()) + ", ms");
        HouseStyle.ticks(axis, 0, milliseconds(window.endS()), 12, "0");
        return axis;
    }

    private XYPlot voltagePlot() {
        List<ToDoubleFunction<WaveformPoint>> lines =
                List.of(window.nodeV(), WaveformPoint::sensedV, WaveformPoint::readingV);
        double from = lines.stream().mapToDouble(this::least).min().orElseThrow();
        double to = lines.stream().mapToDouble(this::most).max().orElseThrow();
        double near = NEAR_FACTOR * Math.max(0.05, to - from);
        List<Double> trips = window.trips().stream()
                .map(Levels.Level::level)
                .filter(within(from - near, to + near))
                .toList();
        for (double tripV : trips) {
            from = Math.min(from, tripV);
            to = Math.max(to, tripV);
        }
        double pad = Math.max(0.1 * (to - from), 0.5 * (LEAST_RANGE_V - (to - from)));
        NumberAxis axis = HouseStyle.upright("Voltage, V", window.color().color());
        HouseStyle.ticks(axis, from - pad, to + pad, 7, "0");
        XYPlot plot = HouseStyle.plot(null, axis);
        int layer = 0;
        if (window.sensedCircuit().isPresent()) {
            layer = add(plot, layer, WaveformPoint::sensedV, Palette.SENSED.color(), HouseStyle.SIDE_LINE);
        }
        layer = add(plot, layer, window.nodeV(), window.color().color(), HouseStyle.MAIN_LINE);
        if (window.hasOwnReading()) {
            add(plot, layer, WaveformPoint::readingV, Palette.SENSED.color(), HouseStyle.DOTTED_LINE);
        }
        return plot;
    }

    private static Predicate<Double> within(double fromV, double toV) {
        return levelV -> levelV > fromV && levelV < toV;
    }

    private XYPlot loadPlot() {
        NumberAxis axis = HouseStyle.upright("Load, A", Palette.INK.color());
        HouseStyle.ticks(axis, 0, 1.15 * Math.max(1, most(WaveformPoint::loadA)), 4, "0");
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
            line[0][i] = milliseconds(line[0][i]);
        }
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("waveform", line);
        return dataset;
    }

    private void writeTrip(Pen pen, List<Panel> panels) {
        window.tripS().ifPresent(tripS -> {
            double x = panels.get(0).x(milliseconds(tripS));
            double top = panels.get(0).area().getY() - 16;
            Color color = Palette.ALARM.color();
            pen.line(x, top, x, panels.get(1).area().getMaxY(), color, HouseStyle.THIN_LINE);
            String text = "trip " + scale.clock(tripS);
            boolean fits = x + 80 < panels.get(0).area().getMaxX();
            pen.text(
                    text,
                    Typeface.prepare().strong(HouseStyle.SMALL),
                    color,
                    fits ? x + 4 : x - 4,
                    top + 9,
                    fits ? Pen.Anchor.LEFT : Pen.Anchor.RIGHT);
        });
    }

    private void writeVoltage(Pen pen, Panel panel) {
        List<SideLabels.Label> labels = new ArrayList<>(Levels.draw(pen, panel, window.trips()));
        Color color = window.color().color();
        double highV = window.highest(window.nodeV());
        double lowV = window.lowest(window.nodeV());
        if (window.sagV() < STEADY_V) {
            labels.add(label(panel, "steady ", highV, color));
        } else {
            labels.add(label(panel, "highest ", highV, color));
            labels.add(label(panel, "lowest ", lowV, color));
            labels.add(new SideLabels.Label(sag(), (panel.y(highV) + panel.y(lowV)) / 2, Palette.INK.color(), true));
            measure(pen, panel.area().getMaxX() - 7, panel.y(highV), panel.y(lowV));
        }
        if (window.sensedCircuit().isPresent()) {
            labels.add(label(panel, "lowest sensed ", window.lowest(WaveformPoint::sensedV), Palette.SENSED.color()));
        }
        SideLabels.write(pen, panel, labels, right);
    }

    /** A measure between two heights. */
    private static void measure(Pen pen, double x, double top, double bottom) {
        Color color = Palette.INK.color();
        pen.line(x, top, x, bottom, color, HouseStyle.SIDE_LINE);
        pen.line(x - 4, top, x + 4, top, color, HouseStyle.SIDE_LINE);
        pen.line(x - 4, bottom, x + 4, bottom, color, HouseStyle.SIDE_LINE);
    }

    private void writeLoad(Pen pen, Panel panel) {
        double mostA = window.highest(WaveformPoint::loadA);
        double leastA = window.lowest(WaveformPoint::loadA);
        SideLabels.write(
                pen,
                panel,
                List.of(
                        new SideLabels.Label(amperes("peak", mostA), panel.y(mostA), Palette.INK.color(), true),
                        new SideLabels.Label(amperes("least", leastA), panel.y(leastA), Palette.INK.color(), false)),
                right);
    }

    private static SideLabels.Label label(Panel panel, String what, double voltageV, Color color) {
        return new SideLabels.Label(what + Levels.volts(voltageV), panel.yInside(voltageV), color, true);
    }

    private List<Head.Key> keys() {
        List<Head.Key> keys = new ArrayList<>();
        keys.add(Head.Key.line(window.node(), window.color().color(), HouseStyle.MAIN_LINE));
        window.sensedCircuit()
                .ifPresent(circuit -> keys.add(Head.Key.line(
                        "sensed at the end of " + circuit, Palette.SENSED.color(), HouseStyle.SIDE_LINE)));
        window.cutoff()
                .filter(cutoff -> window.hasOwnReading())
                .ifPresent(cutoff -> keys.add(
                        Head.Key.line("reading of " + cutoff.name(), Palette.SENSED.color(), HouseStyle.DOTTED_LINE)));
        return keys;
    }

    private double least(ToDoubleFunction<WaveformPoint> value) {
        return window.points().stream().mapToDouble(value).min().orElseThrow();
    }

    private double most(ToDoubleFunction<WaveformPoint> value) {
        return window.points().stream().mapToDouble(value).max().orElseThrow();
    }

    private double milliseconds(double timeS) {
        return 1000 * (timeS - window.startS());
    }

    private String sag() {
        return String.format(Locale.ROOT, "sag %.0f mV", 1000 * window.sagV());
    }

    private static String amperes(String what, double currentA) {
        return String.format(Locale.ROOT, "%s %.1f A", what, currentA);
    }

    private String alternativeText() {
        return String.format(
                Locale.ROOT,
                "A few flash cycles at %s. The %s moves between %s and %s, %s; load current between %.1f and %.1f A.",
                scale.clock(window.startS()),
                window.node().toLowerCase(Locale.ROOT),
                Levels.volts(window.lowest(window.nodeV())),
                Levels.volts(window.highest(window.nodeV())),
                sag(),
                window.lowest(WaveformPoint::loadA),
                window.highest(WaveformPoint::loadA));
    }
}

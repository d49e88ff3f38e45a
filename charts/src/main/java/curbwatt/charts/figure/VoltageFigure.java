package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.vehicle.Vehicle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** Voltage and state of charge over the scene, with everything that acted on them. */
public final class VoltageFigure {

    private static final int WIDTH = 960;
    private static final int LEAST_RIGHT = 148;
    private static final int MOST_RIGHT = 260;
    private static final int VOLTAGE_HEIGHT = 290;
    private static final int CHARGE_HEIGHT = 110;
    private static final int GAP = 14;
    private static final int COLUMNS = 380;

    /** Fewer where twice as many lines are drawn, so that the drawing stays light. */
    private static final int PAIR_COLUMNS = 270;

    private static final int MOST_LABELS = 8;
    private static final double LOWEST_SHOWN_V = 4;

    private final RunStory story;
    private final List<SensedTrace> sensed;
    private final TimeScale scale;
    private final Buckets<TraceRow> buckets;
    private final List<NodeTrace> nodes;
    private final List<Levels.Level> levels;
    private final int right;
    private final SceneFrame frame;
    private final List<EventLabel> events;
    private final PhaseStrip strip;
    private final OpenBands bands;

    private VoltageFigure(RunStory story) {
        this.story = story;
        Vehicle vehicle = story.scenario().vehicle();
        this.sensed = SensedTrace.of(vehicle);
        this.scale = TimeScale.of(story.result().durationS());
        this.nodes = NodeTrace.of(story);
        this.buckets = new Buckets<>(story.trace().rows(), TraceRow::timeS, isPair() ? PAIR_COLUMNS : COLUMNS);
        this.levels = Levels.of(vehicle);
        this.bands = OpenBands.of(story, scale);
        this.right = SideLabels.room(
                Stream.concat(
                                Stream.concat(levels.stream().map(Levels.Level::name), bands.names().stream()),
                                nodes.stream().flatMap(node -> Stream.of(node.voltage(last()), node.endCharge(last()))))
                        .toList(),
                LEAST_RIGHT,
                MOST_RIGHT);
        this.events = EventLabel.of(story);
        this.strip =
                new PhaseStrip(story.scenario().scene().phases(), story.result().phases(), scale);
        this.frame = new SceneFrame(scale, strip, events, MOST_LABELS, HouseStyle.LEFT, WIDTH - right);
    }

    /**
     * The picture {@code voltage}.
     *
     * @param story a run with a trace of at least one line
     * @param caption the words above it
     */
    public static Picture of(RunStory story, Caption caption) {
        return new VoltageFigure(story).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, keys(), WIDTH);
        int top = head.height() + frame.height();
        int gap = GAP + bands.height();
        int height = top + VOLTAGE_HEIGHT + gap + CHARGE_HEIGHT + HouseStyle.BELOW + 8;
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(scale.axis());
        both.setGap(gap);
        both.add(voltagePlot(), VOLTAGE_HEIGHT);
        both.add(chargePlot(), CHARGE_HEIGHT);
        both.setInsets(new RectangleInsets(top, 0, 8, right));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(both), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    frame.write(pen, panels);
                    writeVoltage(pen, panels.get(0));
                    bands.write(pen, panels.get(0), right);
                    writeCharge(pen, panels.get(1));
                });
        return new Sheet("voltage", caption, alternativeText(), WIDTH, height, drawing);
    }

    private XYPlot voltagePlot() {
        NumberAxis axis = HouseStyle.upright("Voltage, V", (isPair() ? Palette.INK : Palette.VOLTAGE).color());
        double lowest = rows().stream().mapToDouble(this::lowest).min().orElse(12);
        double highest = nodes.stream()
                .flatMap(node -> rows().stream().map(node.highestV()::applyAsDouble))
                .max(Comparator.naturalOrder())
                .orElse(13.0);
        double lowestLevel =
                levels.stream().mapToDouble(Levels.Level::level).min().orElse(lowest);
        double highestLevel =
                levels.stream().mapToDouble(Levels.Level::level).max().orElse(highest);
        double from = Math.max(LOWEST_SHOWN_V, Math.min(lowest, lowestLevel));
        double to = Math.max(from + 0.4, Math.max(highest, highestLevel));
        double pad = 0.05 * (to - from);
        HouseStyle.ticks(axis, from - pad, to + pad, 7, "0");
        XYPlot plot = HouseStyle.plot(null, axis);
        strip.shade(plot);
        int layer = 0;
        for (SensedTrace trace : sensed) {
            plot.setDataset(layer, Band.range(buckets, scale, trace::lowestV, trace::highestV));
            plot.setRenderer(layer++, Band.renderer(trace.range().color(), 0.8f));
        }
        for (NodeTrace node : nodes) {
            plot.setDataset(layer, Band.range(buckets, scale, node.lowestV(), node.highestV()));
            plot.setRenderer(layer++, Band.renderer(node.range().color(), 0.7f));
        }
        for (NodeTrace node : nodes) {
            plot.setDataset(layer, line(buckets.line(node.meanV()), 1));
            plot.setRenderer(layer++, HouseStyle.line(node.line().color(), HouseStyle.MAIN_LINE));
        }
        return plot;
    }

    private XYPlot chargePlot() {
        NumberAxis axis = HouseStyle.upright("Charge, %", (isPair() ? Palette.INK : Palette.CHARGE).color());
        axis.setRange(0, 100);
        axis.setTickUnit(new NumberTickUnit(25, HouseStyle.numbers("0")));
        XYPlot plot = HouseStyle.plot(null, axis);
        strip.shade(plot);
        for (int i = 0; i < nodes.size(); i++) {
            plot.setDataset(i, line(buckets.line(nodes.get(i).chargeFraction()), 100));
            plot.setRenderer(i, HouseStyle.line(nodes.get(i).charge().color(), HouseStyle.MAIN_LINE));
        }
        return plot;
    }

    private DefaultXYDataset line(double[][] points, double factor) {
        double[][] scaled = new double[2][points[0].length];
        for (int i = 0; i < points[0].length; i++) {
            scaled[0][i] = scale.at(points[0][i]);
            scaled[1][i] = factor * points[1][i];
        }
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("line", scaled);
        return dataset;
    }

    private void writeVoltage(Pen pen, Panel panel) {
        List<SideLabels.Label> labels = new ArrayList<>(Levels.draw(pen, panel, levels));
        for (NodeTrace node : nodes) {
            double endV = node.meanV().applyAsDouble(last());
            labels.add(new SideLabels.Label(
                    node.voltage(last()), panel.yInside(endV), node.line().color(), true));
        }
        for (EventLabel event : events) {
            if (event.hasShownVoltage()) {
                double y = panel.yInside(event.events().get(0).voltageV());
                pen.dot(panel.x(scale.at(event.timeS())), y, event.color());
            }
        }
        SideLabels.write(pen, panel, labels, right);
    }

    private void writeCharge(Pen pen, Panel panel) {
        List<SideLabels.Label> labels = new ArrayList<>();
        labels.addAll(Levels.draw(pen, panel, Levels.ofCharge(story.scenario().requirements(), isPair())));
        for (NodeTrace node : nodes) {
            double end = node.chargeFraction().applyAsDouble(last());
            labels.add(new SideLabels.Label(
                    node.endCharge(last()),
                    panel.yInside(100 * end),
                    node.charge().color(),
                    true));
        }
        SideLabels.write(pen, panel, labels, right);
    }

    private List<Head.Key> keys() {
        List<Head.Key> keys = new ArrayList<>();
        for (NodeTrace node : nodes) {
            keys.add(Head.Key.line(node.key() + ", mean", node.line().color(), HouseStyle.MAIN_LINE));
            if (node.hasVisibleRange(rows())) {
                keys.add(Head.Key.area("its lowest to highest", node.range().color()));
            }
        }
        sensed.forEach(trace -> keys.add(trace.key()));
        keys.addAll(bands.keys());
        return keys;
    }

    private boolean isPair() {
        return nodes.size() > 1;
    }

    private double lowest(TraceRow row) {
        return DoubleStream.concat(
                        nodes.stream().mapToDouble(node -> node.lowestV().applyAsDouble(row)),
                        sensed.stream().mapToDouble(trace -> trace.lowestV(row)))
                .min()
                .orElseThrow();
    }

    private TraceRow last() {
        return rows().get(rows().size() - 1);
    }

    private List<TraceRow> rows() {
        return story.trace().rows();
    }

    private String alternativeText() {
        RunResult result = story.result();
        String marks = events.stream()
                .limit(MOST_LABELS)
                .map(event -> event.text(scale))
                .collect(Collectors.joining("; "));
        String happened = marks.isEmpty() ? "none" : marks;
        if (isPair()) {
            return "Voltage and state of charge over time. "
                    + nodes.stream().map(node -> node.inWords(rows())).collect(Collectors.joining(" "))
                    + " Events: " + happened + "." + bands.inWords();
        }
        return String.format(
                        Locale.ROOT,
                        "Voltage and state of charge over time. The battery node is at %s at the start and %s at the end,"
                                + " lowest %s at %s. State of charge goes from %s to %s. Events: %s.",
                        Levels.volts(rows().get(0).nodeMeanV()),
                        Levels.volts(last().nodeMeanV()),
                        Levels.volts(result.lowestV()),
                        scale.clock(result.lowestAtS()),
                        percent(rows().get(0).stateOfChargeFraction()),
                        percent(result.endChargeFraction()),
                        happened)
                + bands.inWords();
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * fraction);
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.alternator.Alternator;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** What the alternator delivers at each engine speed, hot and cold, against what the loads ask for. */
public final class AlternatorFigure {

    private static final int WIDTH = 960;
    private static final int RIGHT = 220;
    private static final int PLOT_HEIGHT = 350;
    private static final int LANE_HEIGHT = 16;
    private static final int MOST_LANES = 6;
    private static final double FASTEST_RPM = 8000;
    private static final int POINTS = 160;

    /** Demands nearer than this share are one line, that of the largest. */
    private static final double SAME_DEMAND_FRACTION = 0.1;

    private final Alternator alternator;
    private final Alternator hottest;
    private final OptionalDouble hottestC;
    private final List<RunningPhase> running;
    private final List<RunningPhase> demands;
    private final double mostRpm;
    private final List<Mark> marks;

    /** An engine speed that is worth a label. */
    private record Mark(double atRpm, double outputA, String text, boolean balance) {}

    private AlternatorFigure(Alternator alternator, RunStory story) {
        this.alternator = alternator;
        this.running = RunningPhase.longest(story);
        this.hottestC = running.stream()
                .flatMapToDouble(phase -> phase.underHoodC().stream())
                .max();
        this.hottest = alternator.under(hottestC);
        List<RunningPhase> distinct = new ArrayList<>();
        for (RunningPhase phase : running.stream()
                .sorted(Comparator.comparing((RunningPhase phase) -> -phase.demandA()))
                .toList()) {
            if (distinct.stream().noneMatch(other -> isSameDemand(other, phase))) {
                distinct.add(phase);
            }
        }
        this.demands = List.copyOf(distinct);
        double highestRpm = Math.max(
                running.stream().mapToDouble(RunningPhase::toRpm).max().orElse(0),
                demands.stream()
                        .mapToDouble(demand -> demand.balanceRpm().orElse(0))
                        .max()
                        .orElse(0));
        this.mostRpm = Math.min(FASTEST_RPM, Math.max(3000, 500 * Math.ceil(1.3 * highestRpm / 500)));
        this.marks = marks();
    }

    /**
     * The picture {@code alternator}; empty if the vehicle has none.
     *
     * @param story a run
     * @param caption the words above it
     */
    public static Optional<Picture> of(RunStory story, Caption caption) {
        return story.scenario()
                .vehicle()
                .alternator()
                .map(alternator -> new AlternatorFigure(alternator, story).sheet(caption));
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, List.of(), WIDTH);
        List<LabelLanes.Place> places = places();
        int lanes = places.stream().mapToInt(LabelLanes.Place::lane).max().orElse(-1) + 1;
        int top = head.height() + lanes * LANE_HEIGHT + 10;
        int height = top + PLOT_HEIGHT + HouseStyle.BELOW + 8;
        XYPlot plot = plot();
        plot.setInsets(new RectangleInsets(top, 0, 8, RIGHT));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(plot), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    Panel panel = panels.get(0);
                    head.write(pen);
                    writeUntrusted(pen, panel);
                    writeSide(pen, panel);
                    writeSpeedRanges(pen, panel);
                    places.forEach(place -> writeMark(pen, panel, place));
                });
        return new Sheet("alternator", caption, alternativeText(), WIDTH, height, drawing);
    }

    private XYPlot plot() {
        NumberAxis upright = HouseStyle.upright("Output, A", Palette.ALTERNATOR_INK.color());
        double mostA = Math.max(
                coldA(mostRpm),
                demands.stream().mapToDouble(RunningPhase::demandA).max().orElse(0));
        HouseStyle.ticks(upright, 0, 1.08 * mostA, 8, "0");
        NumberAxis across = HouseStyle.across("Engine speed, 1/min");
        HouseStyle.ticks(across, 0, mostRpm, 10, "0");
        XYPlot plot = HouseStyle.plot(across, upright);
        plot.setDataset(0, curve(this::coldA));
        plot.setRenderer(0, HouseStyle.line(Palette.ALTERNATOR_INK.color(), HouseStyle.DOTTED_LINE));
        plot.setDataset(1, curve(hottest::maximumA));
        plot.setRenderer(1, HouseStyle.line(Palette.ALTERNATOR.color(), HouseStyle.STRONG_LINE));
        return plot;
    }

    private DefaultXYDataset curve(DoubleUnaryOperator outputA) {
        double[][] points = new double[2][POINTS + 1];
        for (int i = 0; i <= POINTS; i++) {
            points[0][i] = mostRpm * i / POINTS;
            points[1][i] = outputA.applyAsDouble(points[0][i]);
        }
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("output", points);
        return dataset;
    }

    private double coldA(double engineRpm) {
        return alternator.output().maximumA(alternator.pulleyRatio() * engineRpm);
    }

    private List<Mark> marks() {
        List<Mark> all = new ArrayList<>();
        Map<String, List<RunningPhase>> alike = running.stream()
                .collect(Collectors.groupingBy(RunningPhase::outputText, LinkedHashMap::new, Collectors.toList()));
        alike.forEach((at, phases) -> {
            RunningPhase one = phases.get(0);
            String names = phases.stream().map(RunningPhase::name).collect(Collectors.joining(", "));
            all.add(new Mark(one.fromRpm(), one.alternator().maximumA(one.fromRpm()), names + " " + at, false));
        });
        for (RunningPhase demand : demands) {
            demand.balanceRpm()
                    .ifPresent(rpm -> all.add(new Mark(
                            rpm, demand.demandA(), String.format(Locale.ROOT, "balance %.0f/min", rpm), true)));
        }
        all.sort(Comparator.comparing(Mark::atRpm));
        return all;
    }

    private List<LabelLanes.Place> places() {
        double plotWidth = WIDTH - RIGHT - HouseStyle.LEFT;
        List<LabelLanes.Wish> wishes = marks.stream()
                .map(mark -> new LabelLanes.Wish(
                        HouseStyle.LEFT + plotWidth * mark.atRpm() / mostRpm, Pen.width(mark.text(), font())))
                .toList();
        return LabelLanes.places(wishes, HouseStyle.LEFT, WIDTH - 12, MOST_LANES);
    }

    private void writeMark(Pen pen, Panel panel, LabelLanes.Place place) {
        Mark mark = marks.get(place.index());
        int lanes = places().stream().mapToInt(LabelLanes.Place::lane).max().orElse(0) + 1;
        double base = panel.area().getY() - 10 - (lanes - 1 - place.lane()) * LANE_HEIGHT;
        double x = panel.x(mark.atRpm());
        var color = mark.balance() ? Palette.HELD.color() : Palette.INK.color();
        pen.line(x, base - 9, x, panel.area().getMaxY(), color, HouseStyle.THIN_LINE);
        pen.dot(x, panel.yInside(mark.outputA()), color);
        pen.text(mark.text(), font(), color, place.fromPx(), base, Pen.Anchor.LEFT);
    }

    /** A phase whose speed changes covers a stretch of the curve. */
    private void writeSpeedRanges(Pen pen, Panel panel) {
        for (RunningPhase phase : running) {
            if (phase.toRpm() > phase.fromRpm()) {
                double y = panel.area().getMaxY() - 4;
                pen.line(
                        panel.x(phase.fromRpm()),
                        y,
                        panel.x(Math.min(mostRpm, phase.toRpm())),
                        y,
                        Palette.INK.color(),
                        HouseStyle.STRONG_LINE);
            }
        }
    }

    private void writeSide(Pen pen, Panel panel) {
        List<SideLabels.Label> labels = new ArrayList<>();
        labels.add(new SideLabels.Label(
                hottestC.isPresent()
                        ? String.format(Locale.ROOT, "hot, %.0f °C under the hood", hottestC.getAsDouble())
                        : "hot",
                panel.yInside(hottest.maximumA(mostRpm)),
                Palette.ALTERNATOR_INK.color(),
                true));
        labels.add(new SideLabels.Label(
                "cold, as labelled", panel.yInside(coldA(mostRpm)), Palette.ALTERNATOR_INK.color(), false));
        for (RunningPhase demand : demands) {
            double y = panel.y(demand.demandA());
            pen.line(panel.area().getX(), y, panel.area().getMaxX(), y, Palette.DEMAND.color(), HouseStyle.LEVEL_LINE);
            String names = running.stream()
                    .filter(phase -> isSameDemand(demand, phase))
                    .map(RunningPhase::name)
                    .collect(Collectors.joining(", "));
            String reached = demand.balanceRpm().isPresent() ? "" : "; never reached";
            labels.add(new SideLabels.Label(
                    String.format(Locale.ROOT, "loads %.0f A, %s%s", demand.demandA(), names, reached),
                    y,
                    Palette.DEMAND.color(),
                    true));
        }
        SideLabels.write(pen, panel, labels, RIGHT);
    }

    private void writeUntrusted(Pen pen, Panel panel) {
        double right = panel.x(alternator.output().trustedFromRpm() / alternator.pulleyRatio());
        Rectangle2D area = panel.area();
        pen.hatch(
                new Rectangle2D.Double(area.getX(), area.getY(), right - area.getX(), area.getHeight()),
                Palette.RULE.color());
        Font small = Typeface.prepare().regular(HouseStyle.SMALL);
        pen.textOnPaper("not to be", small, Palette.MUTED.color(), area.getX() + 8, area.getY() + 20, Pen.Anchor.LEFT);
        pen.textOnPaper("trusted", small, Palette.MUTED.color(), area.getX() + 8, area.getY() + 35, Pen.Anchor.LEFT);
    }

    private static boolean isSameDemand(RunningPhase one, RunningPhase other) {
        return Math.abs(one.demandA() - other.demandA()) <= SAME_DEMAND_FRACTION * one.demandA();
    }

    private static Font font() {
        return Typeface.prepare().strong(HouseStyle.SMALL);
    }

    private String alternativeText() {
        return "Alternator output against engine speed, hot and cold, with the mean demand of the loads. "
                + marks.stream().map(Mark::text).collect(Collectors.joining("; "))
                + ".";
    }
}

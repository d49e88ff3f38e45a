package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.TraceRow;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * Where the current comes from and where it goes, over the scene: sources stacked upwards from the middle line,
 * uses stacked downwards, so that both sides are equally high at every instant.
 */
public final class BalanceFigure {

    private static final int RIGHT = 190;
    private static final int PLOT_HEIGHT = 380;
    private static final int COLUMNS = 240;
    private static final int MOST_LABELS = 5;
    /** What lasts less than this share of the scene is too narrow to be seen. */
    private static final double LEAST_SHARE = 0.001;

    /** A contact that chatters would leave no stretch whole. */
    private static final int MOST_JUMPS = 60;

    private static final Set<EventKind> MARKED = Set.of(
            EventKind.CUTOFF_TRIPPED,
            EventKind.CUTOFF_RECLOSED,
            EventKind.RUN_TIME_LIMIT_REACHED,
            EventKind.LINK_CLOSED,
            EventKind.LINK_OPENED);

    private final RunStory story;
    private final TimeScale scale;
    private final Buckets<TraceRow> buckets;
    private final PhaseStrip strip;
    private final SceneFrame frame;
    private final List<BalanceStacks.Layer> sources;
    private final List<BalanceStacks.Layer> uses;
    private final double mostA;
    private final double visibleA;

    private BalanceFigure(RunStory story) {
        this.story = story;
        this.scale = TimeScale.of(story.result().durationS());
        this.buckets = new Buckets<>(story.trace().rows(), TraceRow::timeS, COLUMNS, jumps(story));
        this.strip =
                new PhaseStrip(story.scenario().scene().phases(), story.result().phases(), scale);
        List<EventLabel> events = EventLabel.of(
                story.result().events().stream()
                        .filter(event -> MARKED.contains(event.kind()))
                        .toList(),
                scale.durationS());
        this.frame = new SceneFrame(scale, strip, events, MOST_LABELS, HouseStyle.LEFT, OnePanel.WIDTH - RIGHT);
        BalanceStacks stacks = BalanceStacks.of(story);
        this.sources = stacks.sources();
        this.uses = stacks.uses();
        this.mostA = Math.max(1, Math.max(highest(sources), highest(uses)));
        this.visibleA = mostA / PLOT_HEIGHT;
    }

    /**
     * The picture {@code balance}.
     *
     * @param story a run with a trace of at least one line
     * @param caption the words above it
     */
    public static Picture of(RunStory story, Caption caption) {
        return new BalanceFigure(story).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, List.of(), OnePanel.WIDTH);
        return new OnePanel(head, 6 + frame.height(), PLOT_HEIGHT, RIGHT)
                .sheet("balance", caption, alternativeText(), plot(), (pen, panels) -> {
                    frame.write(pen, panels);
                    writeSides(pen, panels.get(0));
                });
    }

    private XYPlot plot() {
        NumberAxis axis = HouseStyle.upright("Current, A", Palette.INK.color());
        // Both sides count upwards from the middle: the sign is a matter of drawing.
        HouseStyle.ticks(axis, -1.06 * mostA, 1.06 * mostA, 8, "0;\u200a0");
        XYPlot plot = HouseStyle.plot(scale.axis(), axis);
        strip.shade(plot);
        int layer = addStack(plot, 0, sources, 1);
        addStack(plot, layer, uses, -1);
        return plot;
    }

    /** The tallest sum is drawn first, so that the lower ones cover it. */
    private int addStack(XYPlot plot, int firstPlace, List<BalanceStacks.Layer> layers, int sign) {
        int place = firstPlace;
        for (int top = layers.size() - 1; top >= 0; top--) {
            List<BalanceStacks.Layer> below = layers.subList(0, top + 1);
            plot.setDataset(place, steps(below, sign));
            plot.setRenderer(place++, HouseStyle.stepArea(layers.get(top).color()));
        }
        return place;
    }

    /**
     * A step begins where its stretch begins and lasts to the next; equal neighbours are one step. Sums are
     * rounded to what can be seen, so that a layer of no height leaves no sliver.
     */
    private DefaultXYDataset steps(List<BalanceStacks.Layer> layers, int sign) {
        List<double[]> points = new ArrayList<>();
        double lastA = Double.NaN;
        for (int i = 0; i < buckets.stretches().size(); i++) {
            double sumA = sign
                    * visibleA
                    * Math.round(BalanceStacks.sumA(layers, buckets.stretches().get(i)) / visibleA);
            if (points.isEmpty() || sumA != lastA) {
                points.add(new double[] {scale.at(buckets.startOf(i)), sumA});
                lastA = sumA;
            }
        }
        points.add(new double[] {scale.at(scale.durationS()), lastA});
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("stack", new double[][] {
            points.stream().mapToDouble(point -> point[0]).toArray(),
            points.stream().mapToDouble(point -> point[1]).toArray()
        });
        return dataset;
    }

    private void writeSides(Pen pen, Panel panel) {
        double zero = panel.y(0);
        pen.line(panel.area().getX(), zero, panel.area().getMaxX(), zero, Palette.INK.color(), HouseStyle.SIDE_LINE);
        List<BalanceStacks.Layer> downwards = new ArrayList<>(sources);
        Collections.reverse(downwards);
        writeSide(pen, panel, "comes from", downwards, zero - 18 * (downwards.size() + 1) - 4);
        writeSide(pen, panel, "goes to", uses, zero + 22);
    }

    /** Names in the order of the stack, each with its mean over the scene. */
    private void writeSide(Pen pen, Panel panel, String heading, List<BalanceStacks.Layer> layers, double top) {
        Typeface typeface = Typeface.prepare();
        double x = panel.area().getMaxX() + 14;
        double y = top;
        pen.text(
                heading + ", mean A", typeface.regular(HouseStyle.SMALL), Palette.MUTED.color(), x, y, Pen.Anchor.LEFT);
        for (BalanceStacks.Layer layer : layers) {
            y += 18;
            pen.fill(new Rectangle2D.Double(x, y - 10, 12, 11), layer.color());
            String figure = String.format(Locale.ROOT, "%.1f", layer.meanA(story.trace()));
            double figureEnd = OnePanel.WIDTH - 20;
            double room = figureEnd - Pen.width(figure, typeface.strong(HouseStyle.SMALL)) - 8 - (x + 18);
            pen.text(
                    Pen.fitted(layer.name(), typeface.regular(HouseStyle.SMALL), room),
                    typeface.regular(HouseStyle.SMALL),
                    Palette.INK.color(),
                    x + 18,
                    y,
                    Pen.Anchor.LEFT);
            pen.text(figure, typeface.strong(HouseStyle.SMALL), Palette.INK.color(), figureEnd, y, Pen.Anchor.RIGHT);
        }
    }

    /** Means must not run across an instant at which a circuit or the engine is switched. */
    private static List<Double> jumps(RunStory story) {
        Stream<Double> phases = story.result().phases().stream().map(PhaseSummary::startS);
        Stream<Double> contacts = story.result().events().stream()
                .filter(event -> MARKED.contains(event.kind()))
                .map(Event::timeS)
                .limit(MOST_JUMPS);
        return Stream.concat(phases, contacts).toList();
    }

    /** Highest sum of a stretch that is wide enough to be seen; the charging right after a start is not, and goes beyond. */
    private double highest(List<BalanceStacks.Layer> layers) {
        double leastS = LEAST_SHARE * story.result().durationS();
        return IntStream.range(0, buckets.stretches().size())
                .filter(i -> buckets.endOf(i) - buckets.startOf(i) >= leastS)
                .mapToDouble(i -> BalanceStacks.sumA(layers, buckets.stretches().get(i)))
                .max()
                .orElse(0);
    }

    private String alternativeText() {
        return "Mean currents over time. Comes from: " + inWords(sources) + ". Goes to: " + inWords(uses) + ".";
    }

    private String inWords(List<BalanceStacks.Layer> layers) {
        return layers.stream()
                .map(layer -> String.format(Locale.ROOT, "%s %.1f A", layer.name(), layer.meanA(story.trace())))
                .collect(Collectors.joining(", "));
    }
}

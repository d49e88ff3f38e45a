package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.LinkSummary;
import curbwatt.engine.result.TraceRow;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/** Current through the link between the batteries over the scene, and when the link was closed. */
public final class LinkFigure {

    private static final int RIGHT = 200;
    private static final int PLOT_HEIGHT = 230;
    private static final int BAR_HEIGHT = 9;
    private static final int BAR_ROOM = 26;
    private static final int COLUMNS = 380;
    private static final int MOST_LABELS = 8;

    /** A smaller range would make a mountain of what leaks (A). */
    private static final double LEAST_RANGE_A = 5;

    private static final Set<EventKind> MARKED = Set.of(
            EventKind.LINK_CLOSED, EventKind.LINK_OPENED, EventKind.ENGINE_DID_NOT_START, EventKind.CUTOFF_TRIPPED);

    /** Less is not worth a label (Ah). */
    private static final double LEAST_AH = 0.05;

    private final RunStory story;
    private final LinkSummary link;
    private final TimeScale scale;
    private final PhaseStrip strip;
    private final SceneFrame frame;
    private final Buckets<TraceRow> buckets;
    private final List<Closed> closed;
    private final double highestA;
    private final double lowestA;

    /** A stretch in which the link was closed (s). */
    private record Closed(double fromS, double toS) {}

    private LinkFigure(RunStory story, LinkSummary link) {
        this.story = story;
        this.link = link;
        this.scale = TimeScale.of(story.result().durationS());
        this.strip =
                new PhaseStrip(story.scenario().scene().phases(), story.result().phases(), scale);
        List<Event> marked = story.result().events().stream()
                .filter(event -> MARKED.contains(event.kind()))
                .toList();
        this.frame = new SceneFrame(
                scale,
                strip,
                EventLabel.of(marked, scale.durationS()),
                MOST_LABELS,
                HouseStyle.LEFT,
                OnePanel.WIDTH - RIGHT);
        this.buckets = new Buckets<>(
                story.trace().rows(),
                TraceRow::timeS,
                COLUMNS,
                switches().map(Event::timeS).limit(COLUMNS).toList());
        this.closed = closed();
        this.highestA = buckets.stretches().stream()
                .mapToDouble(LinkFigure::meanA)
                .max()
                .orElse(0);
        this.lowestA = buckets.stretches().stream()
                .mapToDouble(LinkFigure::meanA)
                .min()
                .orElse(0);
    }

    /**
     * The picture {@code link}; empty if there is none.
     *
     * @param story a run with a trace of at least one line
     * @param caption the words above it
     */
    public static Optional<Picture> of(RunStory story, Caption caption) {
        return story.result().link().map(link -> new LinkFigure(story, link).sheet(caption));
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, List.of(), OnePanel.WIDTH);
        return new OnePanel(head, 6 + frame.height(), PLOT_HEIGHT, RIGHT)
                .sheet("link", caption, alternativeText(), plot(), (pen, panels) -> {
                    frame.write(pen, panels);
                    writeCurrent(pen, panels.get(0));
                    writeBar(pen, panels.get(0));
                });
    }

    private XYPlot plot() {
        double from = Math.min(lowestA, 0);
        double to = Math.max(highestA, Math.max(0, from + LEAST_RANGE_A));
        double pad = 0.06 * (to - from);
        double bar = (to - from + 2 * pad) * BAR_ROOM / (PLOT_HEIGHT - BAR_ROOM);
        NumberAxis axis = HouseStyle.upright("Link current, A", Palette.INK.color());
        HouseStyle.ticks(axis, from - pad, to + pad + bar, 7, "0");
        XYPlot plot = HouseStyle.plot(scale.axis(), axis);
        strip.shade(plot);
        add(plot, 0, Palette.EQUIPMENT, 1);
        add(plot, 1, Palette.BATTERY, -1);
        return plot;
    }

    /** The current of one direction, in steps. */
    private void add(XYPlot plot, int place, Palette color, int sign) {
        int stretches = buckets.stretches().size();
        double[][] points = new double[2][stretches + 1];
        for (int i = 0; i < stretches; i++) {
            points[0][i] = scale.at(buckets.startOf(i));
            points[1][i] = sign * Math.max(0, sign * meanA(buckets.stretches().get(i)));
        }
        points[0][stretches] = scale.at(scale.durationS());
        points[1][stretches] = points[1][stretches - 1];
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("link", points);
        plot.setDataset(place, dataset);
        plot.setRenderer(place, HouseStyle.stepArea(color.color()));
    }

    private void writeCurrent(Pen pen, Panel panel) {
        double zero = panel.y(0);
        pen.line(panel.area().getX(), zero, panel.area().getMaxX(), zero, Palette.INK.color(), HouseStyle.SIDE_LINE);
        List<SideLabels.Label> labels = new ArrayList<>();
        labels.add(new SideLabels.Label(
                amount("to equipment", link.toEquipmentAh()),
                (zero + panel.yInside(highestA)) / 2,
                Palette.EQUIPMENT.color(),
                true));
        if (link.toStarterAh() > LEAST_AH) {
            labels.add(new SideLabels.Label(
                    amount("back to starter", link.toStarterAh()),
                    (zero + panel.yInside(lowestA)) / 2,
                    Palette.BATTERY.color(),
                    true));
        }
        labels.add(new SideLabels.Label(
                String.format(Locale.ROOT, "largest, at an instant, %.0f A", link.peakA()),
                (zero + panel.yInside(highestA)) / 2 - SideLabels.STEP,
                Palette.MUTED.color(),
                false));
        labels.add(new SideLabels.Label(
                String.format(Locale.ROOT, "closed %.0f %% of the time", 100 * link.closedS() / scale.durationS()),
                panel.area().getY() + BAR_HEIGHT,
                Palette.HELD.color(),
                true));
        SideLabels.write(pen, panel, labels, RIGHT);
    }

    /** A bar along the upper edge: full where the link is closed, hollow where it is open. */
    private void writeBar(Pen pen, Panel panel) {
        double y = panel.area().getY() + BAR_HEIGHT / 2.0;
        Rectangle2D whole =
                new Rectangle2D.Double(panel.area().getX(), y, panel.area().getWidth(), BAR_HEIGHT);
        pen.fill(whole, Palette.PAPER.color());
        pen.outline(whole, Palette.HELD.color(), HouseStyle.THIN_LINE);
        for (Closed stretch : closed) {
            double left = panel.x(scale.at(stretch.fromS()));
            double right = panel.x(scale.at(stretch.toS()));
            pen.fill(new Rectangle2D.Double(left, y, right - left, BAR_HEIGHT), Palette.HELD.color());
        }
    }

    private Stream<Event> switches() {
        return story.result().events().stream()
                .filter(event -> event.kind() == EventKind.LINK_CLOSED || event.kind() == EventKind.LINK_OPENED);
    }

    /** Where it was closed; a link that never switches is closed throughout or not at all. */
    private List<Closed> closed() {
        List<Event> acts = switches().toList();
        if (acts.isEmpty()) {
            return link.closedS() > 0 ? List.of(new Closed(0, scale.durationS())) : List.of();
        }
        List<Closed> stretches = new ArrayList<>();
        double fromS = 0;
        boolean isClosed = acts.get(0).kind() == EventKind.LINK_OPENED;
        for (Event act : acts) {
            if (isClosed) {
                stretches.add(new Closed(fromS, act.timeS()));
            }
            isClosed = act.kind() == EventKind.LINK_CLOSED;
            fromS = act.timeS();
        }
        if (isClosed) {
            stretches.add(new Closed(fromS, scale.durationS()));
        }
        return stretches;
    }

    private static double meanA(List<TraceRow> rows) {
        return rows.stream()
                .mapToDouble(row -> row.equipment().orElseThrow().linkMeanA())
                .average()
                .orElse(0);
    }

    private static String amount(String where, double chargeAh) {
        return String.format(Locale.ROOT, "%s %.1f Ah", where, chargeAh);
    }

    private String alternativeText() {
        return String.format(
                Locale.ROOT,
                "Current through the link between the batteries over time. It is closed for %s and passes %.1f Ah to the"
                        + " equipment node and %.1f Ah back, at most %.0f A.",
                scale.clock(link.closedS()),
                link.toEquipmentAh(),
                link.toStarterAh(),
                link.peakA());
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.run.RosterStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.days.BatteryDays;
import curbwatt.engine.days.Day;
import curbwatt.engine.result.BatteryDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/** What each day puts back into the batteries, upwards, and takes out of them, downwards. */
public final class DayChargeFigure {

    private static final int RIGHT = 190;
    private static final int PLOT_HEIGHT = 270;

    private final RosterStory story;
    private final List<Day> days;
    private final double mostInAh;
    private final double mostOutAh;

    private DayChargeFigure(RosterStory story) {
        this.story = story;
        this.days = story.result().countedDays();
        this.mostInAh = most(BatteryDay::chargedAh);
        this.mostOutAh = most(BatteryDay::dischargedAh);
    }

    /**
     * The picture {@code day-charge}.
     *
     * @param story a roster and its result
     * @param caption the words above it
     */
    public static Picture of(RosterStory story, Caption caption) {
        return new DayChargeFigure(story).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, keys(), OnePanel.WIDTH);
        return new OnePanel(head, 6, PLOT_HEIGHT, RIGHT)
                .sheet("day-charge", caption, alternativeText(), plot(), (pen, panels) -> write(pen, panels.get(0)));
    }

    private List<Head.Key> keys() {
        return batteries() > 1
                ? story.result().batteries().stream()
                        .map(battery -> Head.Key.area(
                                battery.battery(),
                                color(story.result().batteries().indexOf(battery))
                                        .color()))
                        .toList()
                : List.of();
    }

    private XYPlot plot() {
        double pad = 0.06 * Math.max(1, mostInAh + mostOutAh);
        NumberAxis upright = HouseStyle.upright("Charge a day, Ah", Palette.INK.color());
        // both sides count upwards from the middle: the sign is a matter of drawing
        HouseStyle.ticks(upright, -mostOutAh - pad, mostInAh + pad, 8, "0;\u200a0");
        NumberAxis across = HouseStyle.across("Day");
        HouseStyle.ticks(across, 0, Math.max(2, days.size()), 12, "0");
        XYPlot plot = HouseStyle.plot(across, upright);
        int layer = 0;
        for (int last = batteries() - 1; last >= 0; last--) {
            add(plot, layer++, steps(last, BatteryDay::chargedAh, 1), color(last));
            add(plot, layer++, steps(last, BatteryDay::dischargedAh, -1), color(last));
        }
        return plot;
    }

    private static void add(XYPlot plot, int layer, double[][] points, Palette color) {
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("charge", points);
        plot.setDataset(layer, dataset);
        plot.setRenderer(layer, HouseStyle.stepArea(color.color()));
    }

    /** A step for each day, the batteries up to and with one of them on top of each other. */
    private double[][] steps(int last, ToDoubleFunction<BatteryDay> charge, int sign) {
        double[][] points = new double[2][days.size() + 1];
        for (int i = 0; i <= days.size(); i++) {
            points[0][i] = i;
            points[1][i] = sign * sum(days.get(Math.min(i, days.size() - 1)), last, charge);
        }
        return points;
    }

    private static double sum(Day day, int last, ToDoubleFunction<BatteryDay> charge) {
        return day.batteries().stream().limit(last + 1L).mapToDouble(charge).sum();
    }

    private double most(ToDoubleFunction<BatteryDay> charge) {
        return days.stream()
                .mapToDouble(day -> sum(day, batteries() - 1, charge))
                .max()
                .orElse(0);
    }

    private void write(Pen pen, Panel panel) {
        double zero = panel.y(0);
        pen.line(panel.area().getX(), zero, panel.area().getMaxX(), zero, Palette.INK.color(), HouseStyle.SIDE_LINE);
        List<SideLabels.Label> labels = new ArrayList<>();
        labels.add(label("put back", mean(BatteryDay::chargedAh), panel.y(mostInAh / 2)));
        labels.add(label("taken out", mean(BatteryDay::dischargedAh), panel.y(-mostOutAh / 2)));
        SideLabels.write(pen, panel, labels, RIGHT);
    }

    private static SideLabels.Label label(String what, double meanAh, double y) {
        return new SideLabels.Label(
                String.format(Locale.ROOT, "%s %.1f Ah a day", what, meanAh), y, Palette.INK.color(), true);
    }

    private double mean(ToDoubleFunction<BatteryDay> charge) {
        return days.stream()
                .mapToDouble(day -> sum(day, batteries() - 1, charge))
                .average()
                .orElse(0);
    }

    private int batteries() {
        return story.result().batteries().size();
    }

    private static Palette color(int place) {
        return place == 0 ? Palette.CHARGE : Palette.EQUIPMENT;
    }

    private String alternativeText() {
        return "Charge put back and taken out, day by day. "
                + story.result().batteries().stream()
                        .map(DayChargeFigure::inWords)
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private static String inWords(BatteryDays battery) {
        return String.format(
                Locale.ROOT,
                "%s: %.1f Ah put back and %.1f Ah taken out in all",
                battery.battery(),
                battery.throughput().chargedAh(),
                battery.throughput().dischargedAh());
    }
}

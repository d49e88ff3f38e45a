package curbwatt.charts.figure;

import curbwatt.charts.run.RosterStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.days.BatteryDays;
import curbwatt.engine.days.Day;
import curbwatt.engine.result.BatteryDay;
import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/** State of charge day by day: at each day's end, lowest on that day, and where it is going. */
public final class DaysFigure {

    private static final int RIGHT = 24;
    private static final int PLOT_HEIGHT = 330;
    private static final double PERCENT = 100;
    private static final int MARK_HEIGHT = 14;

    private final RosterStory story;

    private DaysFigure(RosterStory story) {
        this.story = story;
    }

    /**
     * The picture {@code days}.
     *
     * @param story a roster and its result
     * @param caption the words above it
     */
    public static Picture of(RosterStory story, Caption caption) {
        return new DaysFigure(story).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, keys(), OnePanel.WIDTH);
        return new OnePanel(head, 6, PLOT_HEIGHT, RIGHT)
                .sheet("days", caption, alternativeText(), plot(), (pen, panels) -> mark(pen, panels.get(0)));
    }

    private List<Head.Key> keys() {
        List<Head.Key> keys = new ArrayList<>();
        for (int place = 0; place < story.result().batteries().size(); place++) {
            String name = story.result().batteries().get(place).battery();
            keys.add(Head.Key.line(name + ", day's end", color(place), HouseStyle.MAIN_LINE));
            keys.add(Head.Key.line("lowest", color(place), HouseStyle.THIN_LINE));
        }
        if (story.result().batteries().stream()
                .anyMatch(battery -> battery.trend().isPresent())) {
            keys.add(Head.Key.line("trend", Palette.INK.color(), HouseStyle.LEVEL_LINE));
        }
        if (story.result().trips() > 0) {
            keys.add(Head.Key.area("day with a cutoff trip", Palette.WARNING.color()));
        }
        if (story.result().failedStartDay().isPresent()) {
            keys.add(Head.Key.area("engine did not start", Palette.ALARM.color()));
        }
        return keys;
    }

    private XYPlot plot() {
        NumberAxis upright = HouseStyle.upright("State of charge, %", Palette.CHARGE.color());
        HouseStyle.ticks(upright, Math.min(0, Math.floor(lowestPercent())), 104, 8, "0");
        NumberAxis across = HouseStyle.across("Day");
        HouseStyle.ticks(across, 0, Math.max(2, story.result().days().size()), 12, "0");
        XYPlot plot = HouseStyle.plot(across, upright);
        for (int place = 0; place < story.result().batteries().size(); place++) {
            BatteryDays battery = story.result().batteries().get(place);
            double startPercent = PERCENT * battery.startChargeFraction();
            add(plot, line(place, BatteryDay::lowestChargeFraction, startPercent), color(place), HouseStyle.THIN_LINE);
            add(plot, line(place, BatteryDay::endChargeFraction, startPercent), color(place), HouseStyle.MAIN_LINE);
            int at = place;
            battery.trend()
                    .ifPresent(trend -> add(
                            plot,
                            trendLine(at, trend.weeklyFraction(), trend.fromDay(), trend.toDay()),
                            Palette.INK.color(),
                            HouseStyle.LEVEL_LINE));
        }
        return plot;
    }

    private static void add(XYPlot plot, double[][] points, Color color, Stroke stroke) {
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("line", points);
        int next = plot.getDatasetCount();
        int index = next == 1 && plot.getDataset(0) == null ? 0 : next;
        plot.setDataset(index, dataset);
        plot.setRenderer(index, HouseStyle.line(color, stroke));
    }

    private double[][] line(int place, ToDoubleFunction<BatteryDay> charge, double startPercent) {
        List<Day> days = story.result().days();
        double[][] points = new double[2][days.size() + 1];
        points[1][0] = startPercent;
        for (int i = 0; i < days.size(); i++) {
            points[0][i + 1] = days.get(i).day();
            points[1][i + 1] =
                    PERCENT * charge.applyAsDouble(days.get(i).batteries().get(place));
        }
        return points;
    }

    /** Through the mean of the charges that it was drawn through. */
    private double[][] trendLine(int place, double weeklyFraction, int fromDay, int toDay) {
        int step = story.roster().pattern().size();
        double sum = 0;
        int points = 0;
        for (int day = fromDay; day <= toDay; day += step) {
            sum += story.result().days().get(day - 1).batteries().get(place).endChargeFraction();
            points++;
        }
        double half = 0.5 * weeklyFraction * (toDay - fromDay) / 7;
        double middle = sum / points;
        return new double[][] {{fromDay, toDay}, {PERCENT * (middle - half), PERCENT * (middle + half)}};
    }

    /** Bars at the upper edge, so that they also show in a year: trips, and below them failed starts. */
    private void mark(Pen pen, Panel panel) {
        double top = panel.area().getY();
        for (Day day : story.result().days()) {
            double left = panel.x(day.day() - 1.0);
            double width = Math.max(1.5, panel.x(day.day()) - left);
            if (day.trips() > 0) {
                pen.fill(new Rectangle2D.Double(left, top, width, MARK_HEIGHT / 2.0), Palette.WARNING.color());
            }
            if (day.failedStarts() > 0) {
                pen.fill(
                        new Rectangle2D.Double(left, top + MARK_HEIGHT / 2.0, width, MARK_HEIGHT),
                        Palette.ALARM.color());
            }
        }
        story.result().failedStartDay().ifPresent(day -> markFailure(pen, panel, day));
    }

    /** What comes after is paled: nobody would let it go on. */
    private static void markFailure(Pen pen, Panel panel, int day) {
        double x = panel.x(day);
        double top = panel.area().getY() + 2 * MARK_HEIGHT;
        Color paper = Palette.PAPER.color();
        pen.fill(
                new Rectangle2D.Double(
                        x, top, panel.area().getMaxX() - x, panel.area().getMaxY() - top),
                new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 170));
        pen.line(x, top, x, panel.area().getMaxY(), Palette.ALARM.color(), HouseStyle.LEVEL_LINE);
        boolean right = x < panel.area().getCenterX();
        pen.textOnPaper(
                "day " + day + ": engine does not start; what follows is not counted",
                Typeface.prepare().strong(HouseStyle.SMALL),
                Palette.ALARM.color(),
                right ? x + 6 : x - 6,
                top + 2 * MARK_HEIGHT,
                right ? Pen.Anchor.LEFT : Pen.Anchor.RIGHT);
    }

    private static Color color(int place) {
        return place == 0 ? Palette.CHARGE.color() : Palette.EQUIPMENT.color();
    }

    private double lowestPercent() {
        return PERCENT
                * story.result().days().stream()
                        .flatMap(day -> day.batteries().stream())
                        .mapToDouble(BatteryDay::lowestChargeFraction)
                        .min()
                        .orElse(0);
    }

    private String alternativeText() {
        return "State of charge over " + story.result().days().size() + " days. "
                + story.result().batteries().stream()
                        .map(battery -> String.format(
                                Locale.ROOT,
                                "%s from %.0f %% to %.0f %%, lowest %.0f %%",
                                battery.battery(),
                                PERCENT * battery.startChargeFraction(),
                                PERCENT * battery.endChargeFraction(),
                                PERCENT * battery.lowestChargeFraction()))
                        .collect(Collectors.joining("; "))
                + ".";
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** When the first cutoff opens in many runs, as bars of equal width. */
public final class TripTimesFigure {

    private static final int WIDTH = 960;
    private static final int RIGHT = 130;
    private static final int PLOT_HEIGHT = 250;
    private static final int MOST_BARS = 40;
    private static final List<Double> WIDTHS_S =
            List.of(10.0, 30.0, 60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, 3600.0, 7200.0, 14400.0, 43200.0, 86400.0);

    private final List<Double> timesS;
    private final int draws;
    private final TimeScale scale;
    private final double barS;
    private final double[] sharesPercent;

    private TripTimesFigure(List<Double> timesS, int draws, double durationS) {
        if (timesS.isEmpty()) {
            throw new IllegalArgumentException("timesS is empty; without a trip there is nothing to draw");
        }
        this.timesS = List.copyOf(timesS);
        this.draws = draws;
        this.scale = TimeScale.of(durationS);
        this.barS = WIDTHS_S.stream()
                .filter(widthS -> durationS / widthS <= MOST_BARS)
                .findFirst()
                .orElse(durationS / MOST_BARS);
        this.sharesPercent = new double[(int) Math.ceil(durationS / barS) + 1];
        for (double timeS : timesS) {
            sharesPercent[(int) (timeS / barS)] += 100.0 / draws;
        }
    }

    /**
     * The picture {@code trip-times}.
     *
     * @param timesS first openings (s), at least one
     * @param draws number of all runs, also of those in which nothing opened
     * @param durationS length of the longest scene (s)
     * @param caption the words above it
     */
    public static Picture of(List<Double> timesS, int draws, double durationS, Caption caption) {
        return new TripTimesFigure(timesS, draws, durationS).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, List.of(), WIDTH);
        int top = head.height() + 10;
        int height = top + PLOT_HEIGHT + HouseStyle.BELOW + 8;
        NumberAxis upright = HouseStyle.upright("Share of all draws, %", Palette.ALARM.color());
        HouseStyle.ticks(upright, 0, 1.08 * mostPercent(), 6, "0");
        XYPlot plot = HouseStyle.plot(scale.axis(), upright);
        plot.setInsets(new RectangleInsets(top, 0, 8, RIGHT));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(plot), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    bars(pen, panels.get(0));
                });
        return new Sheet("trip-times", caption, alternativeText(), WIDTH, height, drawing);
    }

    private void bars(Pen pen, Panel panel) {
        double bottom = panel.area().getMaxY();
        for (int i = 0; i < sharesPercent.length; i++) {
            double left = panel.x(scale.at(i * barS));
            double right = Math.min(panel.area().getMaxX(), panel.x(scale.at((i + 1) * barS)));
            double y = panel.y(sharesPercent[i]);
            if (sharesPercent[i] > 0) {
                pen.fill(new Rectangle2D.Double(left + 0.5, y, right - left - 1, bottom - y), Palette.ALARM.color());
            }
        }
        double x = panel.area().getMaxX() + 14;
        double y = panel.area().getCenterY();
        pen.text(never(), Typeface.prepare().strong(HouseStyle.TITLE), Palette.MUTED.color(), x, y, Pen.Anchor.LEFT);
        pen.text(
                "never trip",
                Typeface.prepare().regular(HouseStyle.SMALL),
                Palette.MUTED.color(),
                x,
                y + 16,
                Pen.Anchor.LEFT);
    }

    private String never() {
        int left = draws - timesS.size();
        double percent = 100.0 * left / draws;
        boolean fine = left > 0 && left < draws && (percent < 1 || percent > 99);
        return String.format(Locale.ROOT, fine ? "%.1f %%" : "%.0f %%", percent);
    }

    private double mostPercent() {
        double most = 0;
        for (double percent : sharesPercent) {
            most = Math.max(most, percent);
        }
        return most;
    }

    private String alternativeText() {
        return String.format(
                Locale.ROOT,
                "Histogram of the first trip: %d of %d draws trip, the first at %s, the middle one at %s, the last at %s; %s"
                        + " never trip.",
                timesS.size(),
                draws,
                scale.clock(timesS.get(0)),
                scale.clock(timesS.get(timesS.size() / 2)),
                scale.clock(timesS.get(timesS.size() - 1)),
                never());
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** How much an outcome depends on each input: bars to the left and right of nothing, the longest on top. */
public final class ImportanceFigure {

    /**
     * A bar.
     *
     * @param name of the input
     * @param ratio how much, −1 … 1
     * @param lowRatio lower bound
     * @param highRatio upper bound
     */
    public record Bar(String name, double ratio, double lowRatio, double highRatio) {}

    private static final int WIDTH = 960;
    private static final int NAMES = 150;
    private static final int RIGHT = 30;
    private static final int STEP = 34;

    private final List<Bar> bars;
    private final String axis;
    private final double leastRatio;

    private ImportanceFigure(List<Bar> bars, String axis) {
        this.bars = List.copyOf(bars);
        this.axis = axis;
        this.leastRatio = bars.stream().anyMatch(bar -> bar.ratio() < -0.05) ? -1 : -0.1;
    }

    /**
     * The picture {@code importance}.
     *
     * @param bars from the top; at least one
     * @param axis what their length is
     * @param caption the words above it
     */
    public static Picture of(List<Bar> bars, String axis, Caption caption) {
        return new ImportanceFigure(bars, axis).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, List.of(), WIDTH);
        int top = head.height() + 6;
        int height = top + STEP * bars.size() + HouseStyle.BELOW + 12;
        NumberAxis across = HouseStyle.across(axis);
        across.setRange(leastRatio, 1);
        across.setTickUnit(new NumberTickUnit(leastRatio < -0.5 ? 0.5 : 0.2, HouseStyle.numbers("0.0")));
        NumberAxis upright = HouseStyle.upright("", Palette.INK.color());
        upright.setRange(0, bars.size());
        upright.setTickLabelsVisible(false);
        XYPlot plot = HouseStyle.plot(across, upright);
        plot.setRangeGridlinesVisible(false);
        plot.setInsets(new RectangleInsets(top, NAMES - HouseStyle.LEFT, 8, RIGHT));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(plot), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    write(pen, panels.get(0));
                });
        return new Sheet("importance", caption, alternativeText(), WIDTH, height, drawing);
    }

    private void write(Pen pen, Panel panel) {
        double zero = panel.x(0);
        pen.line(zero, panel.area().getY(), zero, panel.area().getMaxY(), Palette.RULE.color(), HouseStyle.THIN_LINE);
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            double middle = panel.area().getY() + (i + 0.5) * panel.area().getHeight() / bars.size();
            double end = panel.x(bar.ratio());
            Color color = (bar.ratio() < 0 ? Palette.ALARM : Palette.VOLTAGE).color();
            pen.fill(new Rectangle2D.Double(Math.min(zero, end), middle - 9, Math.abs(end - zero), 18), color);
            double low = panel.x(Math.max(leastRatio, bar.lowRatio()));
            double high = panel.x(Math.min(1, bar.highRatio()));
            pen.line(low, middle, high, middle, Palette.INK.color(), HouseStyle.SIDE_LINE);
            pen.line(low, middle - 4, low, middle + 4, Palette.INK.color(), HouseStyle.SIDE_LINE);
            pen.line(high, middle - 4, high, middle + 4, Palette.INK.color(), HouseStyle.SIDE_LINE);
            pen.text(
                    bar.name(),
                    Typeface.prepare().regular(HouseStyle.TEXT),
                    Palette.INK.color(),
                    NAMES - 10,
                    middle + 5,
                    Pen.Anchor.RIGHT);
            boolean left = bar.ratio() < 0;
            pen.text(
                    number(bar.ratio()),
                    Typeface.prepare().strong(HouseStyle.SMALL),
                    color,
                    left ? Math.min(low, end) - 8 : Math.max(high, end) + 8,
                    middle + 4,
                    left ? Pen.Anchor.RIGHT : Pen.Anchor.LEFT);
        }
    }

    private static String number(double ratio) {
        return HouseStyle.numbers("0.00").format(ratio);
    }

    private String alternativeText() {
        return axis + ": "
                + bars.stream()
                        .map(bar -> String.format(
                                Locale.ROOT,
                                "%s %s (%s to %s)",
                                bar.name(),
                                number(bar.ratio()),
                                number(bar.lowRatio()),
                                number(bar.highRatio())))
                        .collect(Collectors.joining("; "))
                + ".";
    }
}

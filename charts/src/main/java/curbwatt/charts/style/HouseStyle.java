package curbwatt.charts.style;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepAreaRenderer;
import org.jfree.chart.ui.RectangleInsets;

/** How a chart is dressed: white ground, hairline grid across, no outline, no shadow, no box round anything. */
public final class HouseStyle {

    /** Size of titles (px). */
    public static final float TITLE = 18;

    /** Size of subtitles and axis labels (px). */
    public static final float TEXT = 13;

    /** Size of labels inside a chart and at ticks (px). */
    public static final float SMALL = 12;

    /** Line of a main quantity. */
    public static final Stroke MAIN_LINE = line(2, 1);

    /** Line of the one quantity that a picture is about. */
    public static final Stroke STRONG_LINE = line(3, 1);

    /** Line of a quantity beside the main one. */
    public static final Stroke SIDE_LINE = line(1.3f, 1);

    /** Line of an instant or a leader. */
    public static final Stroke THIN_LINE = line(0.8f, 1);

    /** Broken line of a level. */
    public static final Stroke LEVEL_LINE = line(1.1f, 1, 5, 3);

    /** Dotted line of a quantity that is only compared with. */
    public static final Stroke DOTTED_LINE = line(1.3f, 1, 1.5f, 3);

    /** Lines of runs that are laid over each other, in the order of their colours. */
    private static final List<Stroke> COMPARED_LINES = List.of(
            line(2.2f, 1),
            line(2, 1, 9, 4),
            line(2, 1, 2, 4),
            line(1.6f, 1, 14, 3, 2, 3),
            line(1.6f, 1, 5, 3),
            line(1.6f, 1, 16, 6));

    /** Room to the left of a chart for the numbers and the label of its axis (px). */
    public static final int LEFT = 60;

    /** Room below a chart for the numbers and the label of its axis (px). */
    public static final int BELOW = 44;

    private HouseStyle() {}

    /** Line of one of several runs in one picture, in the order of {@link Palette#compared(int)}. */
    public static Stroke comparedLine(int place) {
        return COMPARED_LINES.get(place);
    }

    /** Numbers with a point, a real minus sign and the given pattern, whatever the machine's language. */
    public static NumberFormat numbers(String pattern) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setMinusSign('−');
        return new DecimalFormat(pattern, symbols);
    }

    /** An axis along the lower edge. */
    public static NumberAxis across(String label) {
        NumberAxis axis = axis(label, Palette.INK.color());
        axis.setFixedDimension(BELOW);
        axis.setAxisLineVisible(true);
        axis.setAxisLinePaint(Palette.RULE.color());
        axis.setTickMarksVisible(true);
        axis.setTickMarkPaint(Palette.RULE.color());
        return axis;
    }

    /** An axis along the left edge, its label in the colour of what it measures. */
    public static NumberAxis upright(String label, Color color) {
        NumberAxis axis = axis(label, color);
        axis.setFixedDimension(LEFT);
        axis.setAxisLineVisible(false);
        axis.setTickMarksVisible(false);
        return axis;
    }

    /**
     * Gives an axis its range and round ticks, few enough for a quiet grid, all with the same number of decimals.
     *
     * @param most how many ticks at most
     * @param pattern whole part of a number's pattern, such as {@code 0}
     */
    public static void ticks(NumberAxis axis, double from, double to, int most, String pattern) {
        axis.setRange(from, to);
        int decimals = Math.max(0, -(int) Math.floor(Math.log10((to - from) / most)));
        for (double unit = Math.pow(10, -decimals); ; unit *= 10, decimals--) {
            for (double factor : new double[] {1, 2, 5}) {
                if ((to - from) / (factor * unit) <= most) {
                    String places = decimals > 0 ? "." + "0".repeat(decimals) : "";
                    String all = pattern.replace("0", "0" + places);
                    axis.setTickUnit(new NumberTickUnit(factor * unit, numbers(all)));
                    return;
                }
            }
        }
    }

    /** A plot without data. */
    public static XYPlot plot(NumberAxis across, NumberAxis upright) {
        XYPlot plot = new XYPlot(null, across, upright, null);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Palette.HAIRLINE.color());
        plot.setRangeGridlineStroke(THIN_LINE);
        plot.setRangeZeroBaselineVisible(false);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        return plot;
    }

    /** A renderer that draws the first series as a line. */
    public static XYLineAndShapeRenderer line(Color color, Stroke stroke) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, color);
        renderer.setSeriesStroke(0, stroke);
        return renderer;
    }

    /** A renderer that fills the first series in steps. */
    public static XYStepAreaRenderer stepArea(Color color) {
        XYStepAreaRenderer renderer = new XYStepAreaRenderer(XYStepAreaRenderer.AREA);
        renderer.setSeriesPaint(0, color);
        return renderer;
    }

    /** A chart round a plot, without title and legend. */
    public static JFreeChart chart(Plot plot) {
        JFreeChart chart = new JFreeChart(null, Typeface.prepare().strong(TITLE), plot, false);
        chart.setBackgroundPaint(Palette.PAPER.color());
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        chart.getRenderingHints().put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        chart.getRenderingHints().put(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        chart.getRenderingHints().put(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        return chart;
    }

    private static NumberAxis axis(String label, Color color) {
        Font small = Typeface.prepare().regular(SMALL);
        NumberAxis axis = new NumberAxis(label);
        axis.setLabelFont(Typeface.prepare().regular(TEXT));
        axis.setLabelPaint(color);
        axis.setTickLabelFont(small);
        axis.setTickLabelPaint(Palette.MUTED.color());
        axis.setAutoRangeIncludesZero(false);
        return axis;
    }

    private static Stroke line(float width, float miter, float... dashes) {
        return new BasicStroke(
                width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, miter, dashes.length == 0 ? null : dashes, 0);
    }
}

package curbwatt.charts.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.DefaultIntervalXYDataset;

/** The range between a lowest and a highest figure along time, as a tinted area in steps. */
final class Band {

    private Band() {}

    /** The range over each stretch, from its start to its end. */
    static <T> DefaultIntervalXYDataset range(
            Buckets<T> buckets, TimeScale scale, ToDoubleFunction<T> lowest, ToDoubleFunction<T> highest) {
        int stretches = buckets.stretches().size();
        double[][] data = new double[6][2 * stretches];
        for (int i = 0; i < stretches; i++) {
            List<T> rows = buckets.stretches().get(i);
            double low = rows.stream().mapToDouble(lowest).min().orElseThrow();
            double high = rows.stream().mapToDouble(highest).max().orElseThrow();
            for (int corner = 0; corner < 2; corner++) {
                double x = scale.at(corner == 0 ? buckets.startOf(i) : buckets.endOf(i));
                double[] values = {x, x, x, low, low, high};
                for (int row = 0; row < values.length; row++) {
                    data[row][2 * i + corner] = values[row];
                }
            }
        }
        DefaultIntervalXYDataset dataset = new DefaultIntervalXYDataset();
        dataset.addSeries("range", data);
        return dataset;
    }

    /** A renderer for the area alone. */
    static DeviationRenderer renderer(Color color, float alpha) {
        DeviationRenderer renderer = new DeviationRenderer(false, false);
        renderer.setAlpha(alpha);
        renderer.setSeriesFillPaint(0, color);
        renderer.setSeriesPaint(0, color);
        renderer.setSeriesStroke(0, new BasicStroke(0));
        return renderer;
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.engine.study.odds.Fan;
import java.awt.Color;
import java.util.List;
import java.util.function.Function;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultIntervalXYDataset;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * Quantiles of many courses as a pale band, a darker one within, and a line in the middle.
 *
 * @param fan the courses
 * @param scale of time
 * @param quantiles the quantiles of a stretch, as many as {@link Fan#PERCENTS}
 * @param factor from their unit to that of the axis
 */
record FanBands(Fan fan, TimeScale scale, Function<Fan.Stretch, List<Double>> quantiles, double factor) {

    private static final int MIDDLE = 2;

    void draw(XYPlot plot, Color line, Color range) {
        plot.setDataset(0, band(0, 4));
        plot.setRenderer(0, Band.renderer(range, 0.45f));
        plot.setDataset(1, band(1, 3));
        plot.setRenderer(1, Band.renderer(range, 1f));
        DefaultXYDataset middle = new DefaultXYDataset();
        int count = fan.stretches().size();
        double[][] points = new double[2][count];
        for (int i = 0; i < count; i++) {
            points[0][i] = middleOf(i);
            points[1][i] = value(i, MIDDLE);
        }
        middle.addSeries("middle", points);
        plot.setDataset(2, middle);
        plot.setRenderer(2, HouseStyle.line(line, HouseStyle.MAIN_LINE));
    }

    private double middleOf(int stretch) {
        return scale.at(fan.stretches().get(stretch).endS() - fan.stretchS() / 2);
    }

    private DefaultIntervalXYDataset band(int low, int high) {
        int count = fan.stretches().size();
        double[][] data = new double[6][count];
        for (int i = 0; i < count; i++) {
            double x = middleOf(i);
            double[] values = {x, x, x, value(i, low), value(i, low), value(i, high)};
            for (int row = 0; row < values.length; row++) {
                data[row][i] = values[row];
            }
        }
        DefaultIntervalXYDataset dataset = new DefaultIntervalXYDataset();
        dataset.addSeries("band", data);
        return dataset;
    }

    /** A quantile of a stretch, in the unit of the axis. */
    double value(int stretch, int quantile) {
        return factor * quantiles.apply(fan.stretches().get(stretch)).get(quantile);
    }

    double lowest() {
        return fan.stretches().stream()
                .mapToDouble(stretch -> factor * quantiles.apply(stretch).get(0))
                .min()
                .orElseThrow();
    }

    double highest() {
        return fan.stretches().stream()
                .mapToDouble(stretch -> factor * quantiles.apply(stretch).get(4))
                .max()
                .orElseThrow();
    }

    /** Places for the names of the quantiles beside the last stretch that at least half of the runs reach. */
    int lastFull() {
        int all = fan.stretches().get(0).running();
        int last = 0;
        for (int i = 0; i < fan.stretches().size(); i++) {
            last = 2 * fan.stretches().get(i).running() >= all ? i : last;
        }
        return last;
    }
}

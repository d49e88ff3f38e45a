package curbwatt.charts.figure;

import curbwatt.charts.run.FlashComparison;
import curbwatt.charts.run.TimedRun;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.result.WaveformPoint;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYAreaRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** A few cycles of the same instant with the heads in each timing: the voltage of all, and the current of each. */
public final class TimingFigure {

    private static final int WIDTH = 960;
    private static final int RIGHT = 168;
    private static final int VOLTAGE_HEIGHT = 220;
    private static final int LOAD_HEIGHT = 92;
    private static final int GAP = 16;
    private static final int COLUMNS = 600;
    private static final double LEAST_RANGE_V = 0.2;
    private static final double MS_PER_S = 1000;

    private final FlashComparison comparison;
    private final double highestV;
    private final double lowestV;
    private final double mostA;

    private TimingFigure(FlashComparison comparison) {
        this.comparison = comparison;
        this.highestV = comparison.runs().stream()
                .mapToDouble(run -> voltage(run).getMax())
                .max()
                .orElseThrow();
        this.lowestV = comparison.runs().stream()
                .mapToDouble(run -> voltage(run).getMin())
                .min()
                .orElseThrow();
        this.mostA = comparison.runs().stream().mapToDouble(this::peakA).max().orElseThrow();
    }

    /**
     * The picture {@code timing}; empty if the runs can't be compared at one instant.
     *
     * @param comparison the runs
     * @param caption the words above it
     */
    public static Optional<Picture> of(FlashComparison comparison, Caption caption) {
        return comparison.isCloseUpWhole()
                ? Optional.of(new TimingFigure(comparison).sheet(caption))
                : Optional.empty();
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, keys(), WIDTH);
        int top = head.height() + 6;
        int loads = comparison.runs().size();
        int height = top + VOLTAGE_HEIGHT + loads * (GAP + LOAD_HEIGHT) + HouseStyle.BELOW + 8;
        NumberAxis across = HouseStyle.across("Time in the close-up, ms");
        HouseStyle.ticks(
                across,
                0,
                MS_PER_S * (comparison.closeUp().toS() - comparison.closeUp().fromS()),
                12,
                "0");
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(across);
        all.setGap(GAP);
        all.add(voltagePlot(), VOLTAGE_HEIGHT);
        comparison.runs().forEach(run -> all.add(loadPlot(run), LOAD_HEIGHT));
        all.setInsets(new RectangleInsets(top, 0, 8, RIGHT));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(all), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    writeVoltage(pen, panels.get(0));
                    for (int i = 0; i < loads; i++) {
                        writeLoad(pen, panels.get(i + 1), comparison.runs().get(i));
                    }
                });
        return new Sheet("timing", caption, alternativeText(), WIDTH, height, drawing);
    }

    private XYPlot voltagePlot() {
        double pad = Math.max(0.08 * (highestV - lowestV), 0.5 * (LEAST_RANGE_V - (highestV - lowestV)));
        NumberAxis axis = HouseStyle.upright("Voltage, V", Palette.INK.color());
        HouseStyle.ticks(axis, lowestV - pad, highestV + pad, 6, "0");
        XYPlot plot = HouseStyle.plot(null, axis);
        for (int i = 0; i < comparison.runs().size(); i++) {
            TimedRun run = comparison.runs().get(i);
            plot.setDataset(i, dataset(run, comparison::nodeV));
            plot.setRenderer(
                    i,
                    HouseStyle.line(
                            color(run).color(),
                            run.timing() == TimedRun.Timing.AS_WRITTEN ? HouseStyle.SIDE_LINE : HouseStyle.MAIN_LINE));
        }
        return plot;
    }

    private XYPlot loadPlot(TimedRun run) {
        NumberAxis axis = HouseStyle.upright("Load, A", color(run).color());
        HouseStyle.ticks(axis, 0, 1.12 * Math.max(1, mostA), 4, "0");
        XYPlot plot = HouseStyle.plot(null, axis);
        plot.setDataset(dataset(run, WaveformPoint::loadA));
        XYAreaRenderer renderer = new XYAreaRenderer(XYAreaRenderer.AREA);
        renderer.setSeriesPaint(0, color(run).color());
        plot.setRenderer(renderer);
        return plot;
    }

    private DefaultXYDataset dataset(TimedRun run, ToDoubleFunction<WaveformPoint> value) {
        double[][] line = new Buckets<>(run.story().waveform(), WaveformPoint::timeS, COLUMNS).line(value);
        for (int i = 0; i < line[0].length; i++) {
            line[0][i] = MS_PER_S * (line[0][i] - comparison.closeUp().fromS());
        }
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("waveform", line);
        return dataset;
    }

    private void writeVoltage(Pen pen, Panel panel) {
        List<SideLabels.Label> labels = new ArrayList<>();
        for (TimedRun run : comparison.runs()) {
            labels.add(new SideLabels.Label(
                    name(run) + " sag " + millivolts(run),
                    panel.y(voltage(run).getMin()),
                    color(run).color(),
                    true));
        }
        SideLabels.write(pen, panel, labels, RIGHT);
    }

    private void writeLoad(Pen pen, Panel panel, TimedRun run) {
        double peakA = peakA(run);
        SideLabels.write(
                pen,
                panel,
                List.of(
                        new SideLabels.Label(
                                String.format(Locale.ROOT, "peak %.1f A", peakA),
                                panel.y(peakA),
                                color(run).color(),
                                true),
                        new SideLabels.Label(name(run), panel.y(0), color(run).color(), false)),
                RIGHT);
    }

    private List<Head.Key> keys() {
        return comparison.runs().stream()
                .map(run -> Head.Key.area(
                        name(run)
                                + (run.asWritten() && run.timing() != TimedRun.Timing.AS_WRITTEN ? ", as written" : ""),
                        color(run).color()))
                .toList();
    }

    private static String name(TimedRun run) {
        return switch (run.timing()) {
            case TOGETHER -> "together";
            case AS_WRITTEN -> "as written";
            case INTERLEAVED -> "interleaved";
        };
    }

    private static Palette color(TimedRun run) {
        return switch (run.timing()) {
            case TOGETHER -> Palette.ALARM;
            case AS_WRITTEN -> Palette.MUTED;
            case INTERLEAVED -> Palette.VOLTAGE;
        };
    }

    private String millivolts(TimedRun run) {
        return String.format(
                Locale.ROOT, "%.0f mV", MS_PER_S * comparison.sagV(run).orElseThrow());
    }

    private DoubleSummaryStatistics voltage(TimedRun run) {
        return comparison.statistics(run, comparison::nodeV);
    }

    private double peakA(TimedRun run) {
        return comparison.statistics(run, WaveformPoint::loadA).getMax();
    }

    private String alternativeText() {
        return "The same few flash cycles with the heads in each timing. "
                + comparison.runs().stream()
                        .map(run -> String.format(
                                Locale.ROOT,
                                "%s: the voltage sags by %s, the current peaks at %.1f A",
                                name(run),
                                millivolts(run),
                                peakA(run)))
                        .collect(Collectors.joining("; "))
                + ".";
    }
}

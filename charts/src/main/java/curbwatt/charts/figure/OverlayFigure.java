package curbwatt.charts.figure;

import curbwatt.charts.run.Trajectory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.TraceRow;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** Voltage and state of charge of several runs, laid over each other on the same axes. */
public final class OverlayFigure {

    private static final int WIDTH = 960;
    private static final int LEAST_RIGHT = 140;
    private static final int MOST_RIGHT = 260;
    private static final int VOLTAGE_HEIGHT = 280;
    private static final int CHARGE_HEIGHT = 170;
    private static final int GAP = 16;
    private static final int COLUMNS = 240;
    private static final double PERCENT = 100;
    private static final double LOWEST_SHOWN_V = 8;

    private final List<Trajectory> runs;
    private final TimeScale scale;
    private final int right;

    private OverlayFigure(List<Trajectory> runs) {
        this.runs = List.copyOf(runs);
        this.scale = TimeScale.of(
                runs.stream().mapToDouble(run -> run.result().durationS()).max().orElseThrow());
        this.right = SideLabels.room(
                runs.stream()
                        .flatMap(run -> Stream.of(endVoltage(run), endCharge(run)))
                        .toList(),
                LEAST_RIGHT,
                MOST_RIGHT);
    }

    /**
     * The picture {@code trajectories}.
     *
     * @param runs one to six, each with a trace of at least one line
     * @param caption the words above it
     */
    public static Picture of(List<Trajectory> runs, Caption caption) {
        return new OverlayFigure(runs).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(caption, keys(), WIDTH);
        int top = head.height() + 6;
        int height = top + VOLTAGE_HEIGHT + GAP + CHARGE_HEIGHT + HouseStyle.BELOW + 8;
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(scale.axis());
        both.setGap(GAP);
        both.add(voltagePlot(), VOLTAGE_HEIGHT);
        both.add(chargePlot(), CHARGE_HEIGHT);
        both.setInsets(new RectangleInsets(top, 0, 8, right));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(both), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    write(pen, panels.get(0), TraceRow::nodeMeanV, true);
                    write(pen, panels.get(1), row -> PERCENT * row.stateOfChargeFraction(), false);
                });
        return new Sheet("trajectories", caption, alternativeText(), WIDTH, height, drawing);
    }

    private List<Head.Key> keys() {
        return IntStream.range(0, runs.size())
                .mapToObj(i -> Head.Key.line(runs.get(i).name(), Palette.compared(i), HouseStyle.comparedLine(i)))
                .toList();
    }

    private XYPlot voltagePlot() {
        NumberAxis axis = HouseStyle.upright("Voltage, V", Palette.INK.color());
        double lowest = Math.max(
                LOWEST_SHOWN_V, rows().mapToDouble(TraceRow::nodeMeanV).min().orElse(12));
        double highest = Math.max(
                lowest + 0.4, rows().mapToDouble(TraceRow::nodeMeanV).max().orElse(14));
        double pad = 0.06 * (highest - lowest);
        HouseStyle.ticks(axis, lowest - pad, highest + pad, 7, "0");
        return plot(axis, TraceRow::nodeMeanV);
    }

    private XYPlot chargePlot() {
        NumberAxis axis = HouseStyle.upright("Charge, %", Palette.INK.color());
        axis.setRange(0, PERCENT);
        axis.setTickUnit(new NumberTickUnit(25, HouseStyle.numbers("0")));
        return plot(axis, row -> PERCENT * row.stateOfChargeFraction());
    }

    private XYPlot plot(NumberAxis axis, ToDoubleFunction<TraceRow> value) {
        XYPlot plot = HouseStyle.plot(null, axis);
        for (int i = 0; i < runs.size(); i++) {
            double[][] line = new Buckets<>(runs.get(i).trace().rows(), TraceRow::timeS, COLUMNS).line(value);
            for (int point = 0; point < line[0].length; point++) {
                line[0][point] = scale.at(line[0][point]);
            }
            DefaultXYDataset dataset = new DefaultXYDataset();
            dataset.addSeries("line", line);
            plot.setDataset(i, dataset);
            plot.setRenderer(i, HouseStyle.line(Palette.compared(i), HouseStyle.comparedLine(i)));
        }
        return plot;
    }

    /** Names at the right end; a dot where a cutoff opened for the first time. */
    private void write(Pen pen, Panel panel, ToDoubleFunction<TraceRow> value, boolean voltage) {
        List<SideLabels.Label> labels = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Trajectory run = runs.get(i);
            labels.add(new SideLabels.Label(
                    voltage ? endVoltage(run) : endCharge(run),
                    panel.yInside(value.applyAsDouble(last(run))),
                    Palette.compared(i),
                    true));
            int place = i;
            run.result().events().stream()
                    .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                    .findFirst()
                    .ifPresent(trip -> pen.dot(
                            panel.x(scale.at(trip.timeS())),
                            panel.yInside(value.applyAsDouble(before(run, trip.timeS()))),
                            Palette.compared(place)));
        }
        SideLabels.write(pen, panel, labels, right);
    }

    private static TraceRow before(Trajectory run, double timeS) {
        TraceRow found = run.trace().rows().get(0);
        for (TraceRow row : run.trace().rows()) {
            if (row.timeS() > timeS) {
                break;
            }
            found = row;
        }
        return found;
    }

    private static TraceRow last(Trajectory run) {
        return run.trace().rows().get(run.trace().rows().size() - 1);
    }

    private static String endVoltage(Trajectory run) {
        return run.name() + " " + Levels.volts(last(run).nodeMeanV());
    }

    private static String endCharge(Trajectory run) {
        return run.name() + " "
                + HouseStyle.numbers("0").format(PERCENT * last(run).stateOfChargeFraction()) + " %";
    }

    private Stream<TraceRow> rows() {
        return runs.stream().flatMap(run -> run.trace().rows().stream());
    }

    private String alternativeText() {
        return "Voltage and state of charge over time of " + runs.size() + " runs. At the end: "
                + runs.stream()
                        .map(run -> endVoltage(run) + ", charge "
                                + HouseStyle.numbers("0")
                                        .format(PERCENT * last(run).stateOfChargeFraction()) + " %")
                        .collect(Collectors.joining("; "))
                + ".";
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.study.odds.Fan;
import curbwatt.engine.vehicle.Vehicle;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** Voltage and charge of many runs over the scene, and how many of them still last. */
public final class FanFigure {

    private static final int WIDTH = 960;
    private static final int RIGHT = 150;
    private static final int VOLTAGE_HEIGHT = 260;
    private static final int CHARGE_HEIGHT = 130;
    private static final int LASTING_HEIGHT = 60;
    private static final int GAP = 14;

    private final Fan fan;
    private final Vehicle vehicle;
    private final TimeScale scale;
    private final FanBands voltage;
    private final FanBands charge;
    private final boolean pair;

    private FanFigure(Fan fan, Vehicle vehicle) {
        this.fan = fan;
        this.vehicle = vehicle;
        this.scale =
                TimeScale.of(fan.stretches().get(fan.stretches().size() - 1).endS());
        this.voltage = new FanBands(fan, scale, Fan.Stretch::lowestV, 1);
        this.charge = new FanBands(fan, scale, Fan.Stretch::chargeFraction, 100);
        this.pair = vehicle.auxiliary().isPresent();
    }

    /**
     * The picture {@code fan}.
     *
     * @param fan quantiles of the courses
     * @param vehicle the vehicle, for its trip levels
     * @param caption the words above it
     */
    public static Picture of(Fan fan, Vehicle vehicle, Caption caption) {
        return new FanFigure(fan, vehicle).sheet(caption);
    }

    private Sheet sheet(Caption caption) {
        Head head = new Head(
                caption,
                List.of(
                        Head.Key.line("middle of the draws", line(), HouseStyle.MAIN_LINE),
                        Head.Key.area("middle half", range()),
                        Head.Key.area("nine tenths", pale(range()))),
                WIDTH);
        int top = head.height() + 6;
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(scale.axis());
        all.setGap(GAP);
        all.add(voltagePlot(), VOLTAGE_HEIGHT);
        all.add(chargePlot(), CHARGE_HEIGHT);
        all.add(lastingPlot(), LASTING_HEIGHT);
        all.setInsets(new RectangleInsets(top, 0, 8, RIGHT));
        int height = top + VOLTAGE_HEIGHT + CHARGE_HEIGHT + LASTING_HEIGHT + 2 * GAP + HouseStyle.BELOW + 8;
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(all), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    List<SideLabels.Label> levels =
                            new ArrayList<>(Levels.draw(pen, panels.get(0), Levels.trips(vehicle)));
                    SideLabels.write(pen, panels.get(0), levels, RIGHT);
                    write(pen, panels.get(1), charge, "%.0f %%");
                    SideLabels.write(pen, panels.get(2), List.of(lastingLabel(panels.get(2))), RIGHT);
                });
        return new Sheet("fan", caption, alternativeText(), WIDTH, height, drawing);
    }

    private static void write(Pen pen, Panel panel, FanBands bands, String pattern) {
        int last = bands.fan().stretches().size() - 1;
        List<SideLabels.Label> labels = new ArrayList<>();
        double middle = bands.value(last, 2);
        labels.add(new SideLabels.Label(
                "longest scenes " + String.format(Locale.ROOT, pattern, middle),
                panel.yInside(middle),
                Palette.MUTED.color(),
                false));
        SideLabels.write(pen, panel, labels, RIGHT);
    }

    private SideLabels.Label lastingLabel(Panel panel) {
        int all = fan.stretches().get(0).running();
        int last = fan.stretches().get(fan.stretches().size() - 1).running();
        return new SideLabels.Label(
                last == all ? "all " + all + " draws" : last + " of " + all + " draws",
                panel.yInside(100.0 * last / all),
                Palette.MUTED.color(),
                false);
    }

    private XYPlot voltagePlot() {
        NumberAxis axis = HouseStyle.upright("Lowest voltage, V", line());
        double from = voltage.lowest();
        double to = voltage.highest();
        for (Levels.Level level : Levels.trips(vehicle)) {
            from = Math.min(from, level.level());
            to = Math.max(to, level.level());
        }
        double pad = 0.05 * Math.max(0.4, to - from);
        HouseStyle.ticks(axis, from - pad, to + pad, 7, "0");
        XYPlot plot = HouseStyle.plot(null, axis);
        voltage.draw(plot, line(), range());
        return plot;
    }

    private XYPlot chargePlot() {
        NumberAxis axis = HouseStyle.upright("Charge, %", chargeLine());
        axis.setRange(0, 100);
        axis.setTickUnit(new NumberTickUnit(25, HouseStyle.numbers("0")));
        XYPlot plot = HouseStyle.plot(null, axis);
        charge.draw(plot, chargeLine(), pair ? Palette.EQUIPMENT_RANGE.color() : Palette.group(3));
        return plot;
    }

    private XYPlot lastingPlot() {
        NumberAxis axis = HouseStyle.upright("Lasting, %", Palette.MUTED.color());
        axis.setRange(0, 104);
        axis.setTickUnit(new NumberTickUnit(50, HouseStyle.numbers("0")));
        XYPlot plot = HouseStyle.plot(null, axis);
        int count = fan.stretches().size();
        double[][] points = new double[2][count];
        for (int i = 0; i < count; i++) {
            points[0][i] = scale.at(fan.stretches().get(i).endS() - fan.stretchS() / 2);
            points[1][i] = 100.0
                    * fan.stretches().get(i).running()
                    / fan.stretches().get(0).running();
        }
        DefaultXYDataset lasting = new DefaultXYDataset();
        lasting.addSeries("lasting", points);
        plot.setDataset(0, lasting);
        plot.setRenderer(0, HouseStyle.line(Palette.MUTED.color(), HouseStyle.SIDE_LINE));
        return plot;
    }

    private Color line() {
        return (pair ? Palette.EQUIPMENT : Palette.VOLTAGE).color();
    }

    private Color range() {
        return (pair ? Palette.EQUIPMENT_RANGE : Palette.VOLTAGE_RANGE).color();
    }

    private Color chargeLine() {
        return (pair ? Palette.EQUIPMENT : Palette.CHARGE).color();
    }

    private static Color pale(Color color) {
        return new Color(
                255 - (255 - color.getRed()) * 45 / 100,
                255 - (255 - color.getGreen()) * 45 / 100,
                255 - (255 - color.getBlue()) * 45 / 100);
    }

    private String alternativeText() {
        int end = voltage.lastFull();
        return String.format(
                Locale.ROOT,
                "Quantiles of lowest voltage and charge over time. At %s, which at least half of the draws reach, nine tenths"
                        + " of them lie between %.2f V and %.2f V and between %.0f %% and %.0f %% of charge.",
                scale.clock(fan.stretches().get(end).endS()),
                voltage.value(end, 0),
                voltage.value(end, 4),
                charge.value(end, 0),
                charge.value(end, 4));
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.study.settings.Cell;
import curbwatt.engine.study.settings.CoarseRange;
import curbwatt.engine.study.settings.FailureKind;
import curbwatt.engine.study.settings.SettingsMap;
import curbwatt.engine.study.settings.SettingsResult;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** The map of a cutoff's settings: why each fails, or how much room it has. */
public final class SettingsFigure {

    private static final int WIDTH = 960;
    private static final int PLOT_HEIGHT = 470;
    private static final int RIGHT = 24;
    private static final int ABOVE = 26;
    private static final int LEAST_TICK_PX = 48;
    private static final int LEAST_ROW_PX = 15;
    private static final BasicStroke RING = new BasicStroke(2.4f);
    private static final BasicStroke RING_GROUND = new BasicStroke(5);
    private static final BasicStroke RANGE =
            new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {6, 3}, 0);

    /**
     * The words of the picture.
     *
     * @param caption above it
     * @param reasons each reason in two or three words
     * @param levels the trip levels as text
     * @param delays the delays as text
     * @param recommended what stands at the recommended setting; empty: it is not in this map
     * @param alternative what it shows, for a reader who can't see it
     */
    public record Words(
            Caption caption,
            Map<FailureKind, String> reasons,
            List<String> levels,
            List<String> delays,
            String recommended,
            String alternative) {

        /** Copies the collections. */
        public Words {
            reasons = Map.copyOf(reasons);
            levels = List.copyOf(levels);
            delays = List.copyOf(delays);
        }
    }

    private final SettingsResult result;
    private final int rule;
    private final Words words;

    private SettingsFigure(SettingsResult result, int rule, Words words) {
        this.result = result;
        this.rule = rule;
        this.words = words;
    }

    /**
     * The picture.
     *
     * @param name its name
     * @param result what was found
     * @param rule which rule of closing, counted from 0
     * @param words the words
     */
    public static Picture of(String name, SettingsResult result, int rule, Words words) {
        return new SettingsFigure(result, rule, words).sheet(name);
    }

    private Sheet sheet(String name) {
        Head head = new Head(words.caption(), keys(), WIDTH);
        int top = head.height() + ABOVE;
        int height = top + PLOT_HEIGHT + HouseStyle.BELOW + 8;
        XYPlot plot = plot();
        plot.setInsets(new RectangleInsets(top, 0, 8, RIGHT));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(plot), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    draw(pen, new MapGround(result, rule, panels.get(0)));
                });
        return new Sheet(name, words.caption(), words.alternative(), WIDTH, height, drawing);
    }

    private List<Head.Key> keys() {
        List<Head.Key> keys = new ArrayList<>();
        List<Cell> cells = result.map().ofRule(rule);
        for (FailureKind kind : FailureKind.values()) {
            if (cells.stream().anyMatch(cell -> MapGround.kind(cell) == kind)) {
                keys.add(Head.Key.area(words.reasons().get(kind), MapGround.color(kind)));
            }
        }
        if (cells.stream().anyMatch(Cell::works)) {
            keys.add(Head.Key.area("works, room 0", MapGround.room(0)));
            keys.add(Head.Key.area("room 3 or more", MapGround.room(MapGround.FULL_ROOM)));
        }
        keys.add(Head.Key.line("held for", Palette.INK.color(), HouseStyle.SIDE_LINE));
        keys.add(Head.Key.line("start margin", Palette.INK.color(), HouseStyle.LEVEL_LINE));
        return keys;
    }

    private XYPlot plot() {
        SettingsMap map = result.map();
        NumberAxis across = HouseStyle.across(null);
        across.setRange(-0.5, map.tripLevelsV().size() - 0.5);
        across.setTickLabelsVisible(false);
        across.setTickMarksVisible(false);
        NumberAxis upright = HouseStyle.upright(null, Palette.INK.color());
        upright.setRange(-0.5, map.tripDelaysS().size() - 0.5);
        upright.setTickLabelsVisible(false);
        XYPlot plot = HouseStyle.plot(across, upright);
        plot.setRangeGridlinesVisible(false);
        return plot;
    }

    private void draw(Pen pen, MapGround ground) {
        ground.fill(pen);
        ticks(pen, ground);
        new MapContours(result.map(), rule, ground).draw(pen);
        names(pen, ground);
        result.recommendation().filter(advice -> advice.cell().rule() == rule).ifPresent(advice -> {
            range(pen, ground, advice.range());
            ring(pen, ground, advice.cell());
        });
    }

    private void ticks(Pen pen, MapGround ground) {
        Font font = Typeface.prepare().regular(HouseStyle.SMALL);
        int everyLevel = (int) Math.ceil(LEAST_TICK_PX / ground.width());
        double below = ground.box(0, 0, 0, 0).getMaxY();
        for (int level = 0; level < words.levels().size(); level += everyLevel) {
            pen.line(ground.x(level), below, ground.x(level), below + 4, Palette.RULE.color(), HouseStyle.THIN_LINE);
            pen.text(
                    words.levels().get(level),
                    font,
                    Palette.MUTED.color(),
                    ground.x(level),
                    below + 17,
                    Pen.Anchor.MIDDLE);
        }
        Font text = Typeface.prepare().regular(HouseStyle.TEXT);
        Rectangle2D area = ground.panel().area();
        pen.text("Trip level, V", text, Palette.INK.color(), area.getCenterX(), below + 38, Pen.Anchor.MIDDLE);
        pen.text("Trip delay", text, Palette.INK.color(), 20, area.getY() - 8, Pen.Anchor.LEFT);
        int everyDelay = (int) Math.ceil(LEAST_ROW_PX / ground.height());
        double left = ground.box(0, 0, 0, 0).getX();
        for (int delay = 0; delay < words.delays().size(); delay += everyDelay) {
            pen.text(
                    words.delays().get(delay),
                    font,
                    Palette.MUTED.color(),
                    left - 6,
                    ground.y(delay) + 4,
                    Pen.Anchor.RIGHT);
        }
    }

    private void names(Pen pen, MapGround ground) {
        Font font = Typeface.prepare().strong(HouseStyle.TEXT);
        MapRegions regions = new MapRegions(result.map(), rule);
        for (FailureKind kind : FailureKind.values()) {
            regions.place(kind).ifPresent(run -> {
                String name = words.reasons().get(kind);
                if (Pen.width(name, font) + 8 < run.length() * ground.width()) {
                    pen.textOnPaper(
                            name,
                            font,
                            Palette.INK.color(),
                            ground.x(run.middle()),
                            ground.y(run.delay()) + 5,
                            Pen.Anchor.MIDDLE);
                }
            });
        }
    }

    private void range(Pen pen, MapGround ground, CoarseRange range) {
        SettingsMap map = result.map();
        Rectangle2D box = ground.box(
                map.tripLevelsV().indexOf(range.leastV()),
                map.tripLevelsV().indexOf(range.mostV()),
                map.tripDelaysS().indexOf(range.leastS()),
                map.tripDelaysS().indexOf(range.mostS()));
        pen.outline(box, Palette.PAPER.color(), HouseStyle.STRONG_LINE);
        pen.outline(box, Palette.INK.color(), RANGE);
    }

    private void ring(Pen pen, MapGround ground, Cell cell) {
        Rectangle2D box = ground.box(cell.level(), cell.level(), cell.delay(), cell.delay());
        pen.outline(box, Palette.PAPER.color(), RING_GROUND);
        pen.outline(box, Palette.ALARM.color(), RING);
        Font font = Typeface.prepare().strong(HouseStyle.TEXT);
        boolean toTheRight = cell.level() < result.map().tripLevelsV().size() / 2;
        boolean above = cell.delay() < result.map().tripDelaysS().size() * 3 / 4;
        pen.textOnPaper(
                words.recommended(),
                font,
                Palette.ALARM.color(),
                toTheRight ? box.getX() : box.getMaxX(),
                above ? box.getY() - 9 : box.getMaxY() + 19,
                toTheRight ? Pen.Anchor.LEFT : Pen.Anchor.RIGHT);
    }
}

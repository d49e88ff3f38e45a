package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.study.settings.Cell;
import curbwatt.engine.study.settings.FailureKind;
import curbwatt.engine.study.settings.SettingsMap;
import curbwatt.engine.study.settings.SettingsResult;
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

    /**
     * The words of the picture.
     *
     * @param caption above it
     * @param reasons each reason in two or three words
     * @param levels the trip levels as text
     * @param delays the delays as text
     * @param recommended what stands at the recommended setting; empty: it is not in this map
     * @param present what stands at the setting that the vehicle has, where that is in this map
     * @param alternative what it shows, for a reader who can't see it
     */
    public record Words(
            Caption caption,
            Map<FailureKind, String> reasons,
            List<String> levels,
            List<String> delays,
            String recommended,
            String present,
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
        plot.setInsets(new RectangleInsets(top, Math.max(0, widestDelay() + 18 - HouseStyle.LEFT), 8, RIGHT));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(plot), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    draw(pen, new MapGround(result, rule, panels.get(0)));
                });
        return new Sheet(name, words.caption(), words.alternative(), WIDTH, height, drawing);
    }

    private double widestDelay() {
        Font font = Typeface.prepare().regular(HouseStyle.SMALL);
        return words.delays().stream()
                .mapToDouble(delay -> Pen.width(delay, font))
                .max()
                .orElse(0);
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
        if (cells.stream().anyMatch(cell -> cell.fate().heldS().isPresent())) {
            keys.add(Head.Key.line("held for", Palette.INK.color(), HouseStyle.SIDE_LINE));
        }
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
        MapContours contours = new MapContours(result.map(), rule, ground);
        contours.draw(pen);
        LabelSpace space = new LabelSpace();
        new MapMarks(result, rule, ground).draw(pen, words.recommended(), words.present(), space);
        names(pen, ground, space);
        contours.label(pen, space);
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

    private void names(Pen pen, MapGround ground, LabelSpace space) {
        Font font = Typeface.prepare().strong(HouseStyle.TEXT);
        MapRegions regions = new MapRegions(result.map(), rule);
        for (FailureKind kind : FailureKind.values()) {
            String name = words.reasons().get(kind);
            double width = Pen.width(name, font);
            regions.places(kind).stream()
                    .filter(run -> width + 8 < run.length() * ground.width())
                    .filter(run -> space.isFree(
                            LabelSpace.box(name, font, ground.x(run.middle()) - width / 2, ground.y(run.delay()) + 5)))
                    .findFirst()
                    .ifPresent(run -> {
                        double base = ground.y(run.delay()) + 5;
                        space.take(LabelSpace.box(name, font, ground.x(run.middle()) - width / 2, base));
                        pen.textOnPaper(
                                name, font, Palette.INK.color(), ground.x(run.middle()), base, Pen.Anchor.MIDDLE);
                    });
        }
    }
}

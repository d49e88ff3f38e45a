package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.study.settings.Fate;
import curbwatt.engine.study.settings.SettingsMap;
import java.awt.Font;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * Lines of equal hold time and equal start margin over a map. Where a cutoff opens more than once, the margin depends on
 * whether it happens to be open when the start is asked for, and jumps from one setting to the next: no line of it runs
 * there. Figures are rounded before, so that where a quantity is the same everywhere, the last digits of the runs don't draw
 * lines of their own.
 *
 * @param map the map
 * @param rule which rule of closing
 * @param ground where it is drawn
 */
record MapContours(SettingsMap map, int rule, MapGround ground) {

    private static final int MOST_LINES = 5;
    private static final double SHORTEST_PX = 60;
    private static final double[] AWAY = {0, 0.15, -0.15, 0.3, -0.3, 0.45, -0.45, 0.6, -0.6};
    private static final double FINEST_MIN = 0.05;
    private static final double FINEST_V = 0.002;
    private static final double[] ROUND_MIN = {1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 240, 360, 720, 1440};
    private static final double[] ROUND_V = {0.05, 0.1, 0.2, 0.25, 0.5, 1, 2};

    /** A line of one value. */
    private record Line(String name, Stroke stroke, double labelFraction, List<Point2D> points) {}

    /** Draws the lines. */
    void draw(Pen pen) {
        lines().forEach(line -> pen.outline(path(line.points()), Palette.INK.color(), line.stroke()));
    }

    /** Writes the values on the lines, each where nothing else stands. */
    void label(Pen pen, LabelSpace space) {
        Font font = Typeface.prepare().regular(HouseStyle.SMALL - 1);
        for (Line line : lines()) {
            Rectangle2D bounds = path(line.points()).getBounds2D();
            if (Math.max(bounds.getWidth(), bounds.getHeight()) > SHORTEST_PX) {
                label(pen, line, font, space);
            }
        }
    }

    private void label(Pen pen, Line line, Font font, LabelSpace space) {
        for (double away : AWAY) {
            double share = line.labelFraction() + away;
            Point2D point = line.points()
                    .get((int) (Math.min(1, Math.max(0, share)) * (line.points().size() - 1)));
            double x = ground.x(point.getX());
            double base = ground.y(point.getY()) + 4;
            Rectangle2D box = LabelSpace.box(line.name(), font, x - Pen.width(line.name(), font) / 2, base);
            if (space.isFree(box)) {
                space.take(box);
                pen.textOnPaper(line.name(), font, Palette.INK.color(), x, base, Pen.Anchor.MIDDLE);
                return;
            }
        }
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        add(
                lines,
                fate -> rounded(scaled(fate.heldS(), 1.0 / 60), FINEST_MIN),
                ROUND_MIN,
                HouseStyle.SIDE_LINE,
                MapContours::time,
                0.35);
        add(
                lines,
                fate -> fate.trips() > 1 ? OptionalDouble.empty() : rounded(fate.restartMarginV(), FINEST_V),
                ROUND_V,
                HouseStyle.LEVEL_LINE,
                value -> String.format(Locale.ROOT, value < 0 ? "−%.2f V" : "%.2f V", Math.abs(value)),
                0.65);
        return lines;
    }

    private void add(
            List<Line> lines,
            Function<Fate, OptionalDouble> quantity,
            double[] round,
            Stroke stroke,
            DoubleFunction<String> name,
            double labelFraction) {
        ContourLines contours =
                new ContourLines(map.tripLevelsV().size(), map.tripDelaysS().size(), (column, row) -> {
                    double value = quantity.apply(
                                    map.at(rule, column, row).orElseThrow().fate())
                            .orElse(Double.NaN);
                    return Double.isFinite(value) ? value : Double.NaN;
                });
        for (double level : levels(contours, round)) {
            contours.at(level).forEach(points -> lines.add(new Line(name.apply(level), stroke, labelFraction, points)));
        }
    }

    private Path2D path(List<Point2D> line) {
        Path2D path = new Path2D.Double();
        path.moveTo(ground.x(line.get(0).getX()), ground.y(line.get(0).getY()));
        line.stream().skip(1).forEach(point -> path.lineTo(ground.x(point.getX()), ground.y(point.getY())));
        return path;
    }

    /** Round values between the smallest and the largest, few enough to be read. */
    private static List<Double> levels(ContourLines lines, double[] round) {
        List<Double> values = new ArrayList<>();
        for (int column = 0; column < lines.columns(); column++) {
            for (int row = 0; row < lines.rows(); row++) {
                double value = lines.value().at(column, row);
                if (!Double.isNaN(value)) {
                    values.add(value);
                }
            }
        }
        if (values.isEmpty()) {
            return List.of();
        }
        double least = values.stream().min(Comparator.naturalOrder()).orElseThrow();
        double most = values.stream().max(Comparator.naturalOrder()).orElseThrow();
        double step = round[round.length - 1];
        for (int i = round.length - 1; i >= 0; i--) {
            if ((most - least) / round[i] <= MOST_LINES) {
                step = round[i];
            }
        }
        List<Double> levels = new ArrayList<>();
        for (long i = (long) Math.floor(least / step) + 1; i * step < most; i++) {
            levels.add(i * step);
        }
        return levels;
    }

    private static OptionalDouble rounded(OptionalDouble value, double finest) {
        return value.isPresent() && Double.isFinite(value.getAsDouble())
                ? OptionalDouble.of(finest * Math.rint(value.getAsDouble() / finest))
                : value;
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(factor * value.getAsDouble()) : value;
    }

    private static String time(double timeMin) {
        long min = Math.round(timeMin);
        if (min < 60) {
            return min + " min";
        }
        return min % 60 == 0 ? min / 60 + " h" : min / 60 + " h " + min % 60 + " min";
    }
}

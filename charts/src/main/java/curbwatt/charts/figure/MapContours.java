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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * Lines of equal hold time and equal start margin over a map.
 *
 * @param map the map
 * @param rule which rule of closing
 * @param ground where it is drawn
 */
record MapContours(SettingsMap map, int rule, MapGround ground) {

    private static final int MOST_LINES = 5;
    private static final double SHORTEST_PX = 60;
    private static final double[] ROUND_MIN = {1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 240, 360, 720, 1440};
    private static final double[] ROUND_V = {0.05, 0.1, 0.2, 0.25, 0.5, 1, 2};

    /** Draws the lines and writes their values on them. */
    void draw(Pen pen) {
        draw(pen, fate -> scaled(fate.heldS(), 1.0 / 60), ROUND_MIN, HouseStyle.SIDE_LINE, MapContours::time, 0.35);
        draw(
                pen,
                Fate::restartMarginV,
                ROUND_V,
                HouseStyle.LEVEL_LINE,
                value -> String.format(Locale.ROOT, value < 0 ? "−%.2f V" : "%.2f V", Math.abs(value)),
                0.65);
    }

    private void draw(
            Pen pen,
            Function<Fate, OptionalDouble> quantity,
            double[] round,
            Stroke stroke,
            DoubleFunction<String> name,
            double where) {
        int columns = map.tripLevelsV().size();
        int rows = map.tripDelaysS().size();
        ContourLines lines = new ContourLines(columns, rows, (column, row) -> {
            double value = quantity.apply(
                            map.at(rule, column, row).orElseThrow().fate())
                    .orElse(Double.NaN);
            return Double.isFinite(value) ? value : Double.NaN;
        });
        Font font = Typeface.prepare().regular(HouseStyle.SMALL - 1);
        for (double level : levels(lines, round)) {
            for (List<Point2D> line : lines.at(level)) {
                Path2D path = path(line);
                pen.outline(path, Palette.INK.color(), stroke);
                if (Math.max(path.getBounds2D().getWidth(), path.getBounds2D().getHeight()) > SHORTEST_PX) {
                    Point2D middle = line.get((int) (where * (line.size() - 1)));
                    pen.textOnPaper(
                            name.apply(level),
                            font,
                            Palette.INK.color(),
                            ground.x(middle.getX()),
                            ground.y(middle.getY()) + 4,
                            Pen.Anchor.MIDDLE);
                }
            }
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

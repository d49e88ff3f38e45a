package curbwatt.charts.figure;

import curbwatt.charts.style.Palette;
import curbwatt.engine.study.settings.Cell;
import curbwatt.engine.study.settings.FailureKind;
import curbwatt.engine.study.settings.SettingsResult;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The cells of a map of settings, trip levels to the right and delays upwards.
 *
 * @param result what was found
 * @param rule which rule of closing
 * @param panel where the map lies
 */
record MapGround(SettingsResult result, int rule, Panel panel) {

    /** Room beyond which a cell grows no darker. */
    static final double FULL_ROOM = 3;

    /** Middle of a column (px). */
    double x(double level) {
        return panel.x(level);
    }

    /** Middle of a row (px). */
    double y(double delay) {
        return panel.y(delay);
    }

    /** Width of a cell (px). */
    double width() {
        return x(1) - x(0);
    }

    /** Height of a cell (px). */
    double height() {
        return y(0) - y(1);
    }

    /** The cells from one to another, both included. */
    Rectangle2D box(int fromLevel, int toLevel, int fromDelay, int toDelay) {
        double left = x(fromLevel - 0.5);
        double top = y(toDelay + 0.5);
        return new Rectangle2D.Double(left, top, x(toLevel + 0.5) - left, y(fromDelay - 0.5) - top);
    }

    /** Fills the cells; equal ones in a row in one piece, so that no seams show. */
    void fill(Pen pen) {
        int levels = result.map().tripLevelsV().size();
        for (int delay = 0; delay < result.map().tripDelaysS().size(); delay++) {
            int from = 0;
            for (int level = 1; level <= levels; level++) {
                if (level == levels || !color(level, delay).equals(color(from, delay))) {
                    pen.fill(closed(box(from, level - 1, delay, delay)), color(from, delay));
                    from = level;
                }
            }
        }
        impossible()
                .forEach(cell ->
                        pen.hatch(box(cell.level(), cell.level(), cell.delay(), cell.delay()), Palette.RULE.color()));
    }

    /** A little larger, so that no paper shows between cells. */
    private static Rectangle2D closed(Rectangle2D box) {
        return new Rectangle2D.Double(box.getX(), box.getY() - 0.4, box.getWidth() + 0.4, box.getHeight() + 0.4);
    }

    private List<Cell> impossible() {
        return result.map().ofRule(rule).stream()
                .filter(cell -> kind(cell) == FailureKind.CANNOT_BE_SET)
                .toList();
    }

    private Color color(int level, int delay) {
        Cell cell = result.map().at(rule, level, delay).orElseThrow();
        return cell.works() ? room(result.reached().getOrDefault(cell, 0.0)) : color(kind(cell));
    }

    /** Why a cell fails, its first reason; null: it does not. */
    static FailureKind kind(Cell cell) {
        return cell.works() ? null : cell.fate().failures().get(0).kind();
    }

    /** Colour of a reason. */
    static Color color(FailureKind kind) {
        return switch (kind) {
            case CANNOT_BE_SET -> Palette.NOT_POSSIBLE.color();
            case NUISANCE_TRIP -> Palette.NUISANCE.color();
            case CHATTER -> Palette.CHATTER.color();
            case CUT_OFF_TOO_EARLY -> Palette.TOO_EARLY.color();
            case WOULD_NOT_START -> Palette.NO_START.color();
            case LOADS_LOST, CHARGE_TOO_LOW, VOLTAGE_TOO_LOW -> Palette.OTHER_FAILURE.color();
        };
    }

    /** Colour of a cell that works, by its room. */
    static Color room(double roomFactor) {
        double share = Math.min(1, roomFactor / FULL_ROOM);
        Color from = Palette.ROOM_LITTLE.color();
        Color to = Palette.ROOM_MUCH.color();
        return new Color(
                mixed(from.getRed(), to.getRed(), share),
                mixed(from.getGreen(), to.getGreen(), share),
                mixed(from.getBlue(), to.getBlue(), share));
    }

    private static int mixed(int from, int to, double share) {
        return (int) Math.round(from + share * (to - from));
    }
}

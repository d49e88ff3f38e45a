package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.vehicle.Vehicle;
import java.awt.Color;
import java.awt.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The voltages at which a vehicle's cutoffs do something, as lines across a panel. */
final class Levels {

    /** A level with its name. */
    record Level(String name, double levelV, Color color, Stroke stroke) {}

    private Levels() {}

    /** Warning, trip and reclose levels, each once. */
    static List<Level> of(Vehicle vehicle) {
        List<Level> levels = new ArrayList<>();
        for (LowVoltageCutoff cutoff : vehicle.cutoffs()) {
            String owner = vehicle.cutoffs().size() > 1 ? ", " + cutoff.name() : "";
            add(levels, "trip", cutoff.tripV(), owner, Palette.ALARM.color(), HouseStyle.SIDE_LINE);
            cutoff.warningV()
                    .ifPresent(levelV ->
                            add(levels, "warning", levelV, owner, Palette.WARNING.color(), HouseStyle.LEVEL_LINE));
            if (cutoff.reclose() instanceof RecloseRule.AboveVoltage above) {
                add(levels, "reclose", above.levelV(), owner, Palette.HELD.color(), HouseStyle.DOTTED_LINE);
            }
        }
        return levels;
    }

    /** Trip levels alone, each once. */
    static List<Level> trips(Vehicle vehicle) {
        return of(vehicle).stream()
                .filter(level -> level.name().startsWith("trip"))
                .toList();
    }

    /** The levels that a panel shows, drawn across it; returns the labels for its right side. */
    static List<SideLabels.Label> draw(Pen pen, Panel panel, List<Level> levels) {
        List<SideLabels.Label> labels = new ArrayList<>();
        for (Level level : levels) {
            if (panel.shows(level.levelV())) {
                double y = panel.y(level.levelV());
                pen.line(panel.area().getX(), y, panel.area().getMaxX(), y, level.color(), level.stroke());
                labels.add(new SideLabels.Label(level.name(), y, level.color(), false));
            }
        }
        return labels;
    }

    /** A voltage as it is written in pictures. */
    static String volts(double voltageV) {
        return String.format(Locale.ROOT, "%.2f V", voltageV);
    }

    private static void add(List<Level> levels, String what, double levelV, String owner, Color color, Stroke stroke) {
        String name = what + " " + volts(levelV) + owner;
        if (levels.stream().noneMatch(level -> level.name().equals(name))) {
            levels.add(new Level(name, levelV, color, stroke));
        }
    }
}

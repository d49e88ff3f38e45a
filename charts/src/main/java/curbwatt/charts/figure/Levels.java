package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import java.awt.Color;
import java.awt.Stroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The levels at which something is done or asked, as lines across a panel. */
final class Levels {

    /** More devices than this with one level are not named one by one. */
    private static final int MOST_NAMES = 2;

    /** A level with its name. */
    record Level(String name, double level, String unit, Color color, Stroke stroke) {}

    private Levels() {}

    /** Warning, trip and reclose voltages of the cutoffs; one that several have is one level that names them. */
    static List<Level> of(Vehicle vehicle) {
        List<Level> levels = new ArrayList<>(trips(vehicle));
        levels.addAll(levels(vehicle, "warning", LowVoltageCutoff::warningV, Palette.WARNING, HouseStyle.LEVEL_LINE));
        levels.addAll(levels(vehicle, "reclose", Levels::recloseV, Palette.HELD, HouseStyle.DOTTED_LINE));
        return levels;
    }

    /** Trip levels alone. */
    static List<Level> trips(Vehicle vehicle) {
        return levels(
                vehicle, "trip", cutoff -> OptionalDouble.of(cutoff.tripV()), Palette.ALARM, HouseStyle.SIDE_LINE);
    }

    /**
     * States of charge that are asked (%), of each battery the highest.
     *
     * @param pair whether there are two batteries
     */
    static List<Level> ofCharge(List<Requirement> requirements, boolean pair) {
        List<Level> levels = new ArrayList<>();
        requirements.stream()
                .filter(Requirement.KeepCharge.class::isInstance)
                .map(asked -> ((Requirement.KeepCharge) asked).leastFraction())
                .max(Comparator.naturalOrder())
                .ifPresent(least -> levels.add(asked(least, pair ? " asked of starter" : " asked")));
        requirements.stream()
                .filter(Requirement.KeepAuxiliaryCharge.class::isInstance)
                .map(asked -> ((Requirement.KeepAuxiliaryCharge) asked).leastFraction())
                .max(Comparator.naturalOrder())
                .ifPresent(least -> levels.add(asked(least, " asked of auxiliary")));
        return levels;
    }

    private static Level asked(double leastFraction, String of) {
        return new Level(
                String.format(Locale.ROOT, "%.0f %%", 100 * leastFraction) + of,
                100 * leastFraction,
                "%",
                Palette.ALARM.color(),
                HouseStyle.LEVEL_LINE);
    }

    /** The levels that a panel shows, drawn across it; returns the labels for its right side. */
    static List<SideLabels.Label> draw(Pen pen, Panel panel, List<Level> levels) {
        List<SideLabels.Label> labels = new ArrayList<>();
        for (Level level : levels) {
            if (panel.shows(level.level())) {
                double y = panel.y(level.level());
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

    private static OptionalDouble recloseV(LowVoltageCutoff cutoff) {
        return cutoff.reclose() instanceof RecloseRule.AboveVoltage above
                ? OptionalDouble.of(above.levelV())
                : OptionalDouble.empty();
    }

    private static List<Level> levels(
            Vehicle vehicle,
            String what,
            Function<LowVoltageCutoff, OptionalDouble> levelV,
            Palette color,
            Stroke stroke) {
        Map<Double, List<String>> owners = new LinkedHashMap<>();
        for (LowVoltageCutoff cutoff : vehicle.cutoffs()) {
            levelV.apply(cutoff)
                    .ifPresent(level -> owners.computeIfAbsent(level, key -> new ArrayList<>())
                            .add(cutoff.name()));
        }
        List<Level> levels = new ArrayList<>();
        owners.forEach((level, names) -> levels.add(new Level(
                what + " " + volts(level) + owned(names, vehicle.cutoffs().size()),
                level,
                "V",
                color.color(),
                stroke)));
        return levels;
    }

    /** Whose level it is: nobody's where there is one device, all of them, or those few by name. */
    private static String owned(List<String> names, int devices) {
        if (devices == 1) {
            return "";
        }
        if (names.size() == devices) {
            return devices == 2 ? ", both" : ", all " + devices;
        }
        return names.size() <= MOST_NAMES
                ? ", " + String.join(" and ", names)
                : ", " + names.get(0) + " and " + (names.size() - 1) + " more";
    }
}

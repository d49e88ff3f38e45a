package curbwatt.engine.battery.label;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.DiffusionModes;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.numeric.Root;
import curbwatt.engine.quantity.Require;
import java.util.ArrayList;
import java.util.List;

/** Discharge of a full, rested battery by a constant current at a constant temperature, in closed form. Immutable. */
public final class DischargeCurve {
    private static final double TIME_TOLERANCE_H = 1e-13;
    /** Stands in for minus infinity, which a root finder cannot interpolate. */
    private static final double EXHAUSTED_V = -10;

    private final Terminal terminal;
    private final DiffusionModes modes;
    private final double currentA;

    /**
     * Makes a curve.
     *
     * @param battery the battery
     * @param temperatureC its temperature, °C
     * @param currentA current, A, above 0
     */
    public DischargeCurve(Battery battery, double temperatureC, double currentA) {
        this.terminal = battery.at(temperatureC);
        this.modes = battery.modes();
        this.currentA = Require.positive("currentA", currentA, "A");
    }

    /**
     * One point of a curve.
     *
     * @param timeH time since the start, h
     * @param voltageV terminal voltage, V
     * @param deliveredAh charge delivered, Ah
     */
    public record Point(double timeH, double voltageV, double deliveredAh) {}

    /** Returns the terminal voltage after {@code timeH} hours, V; negative infinity once the battery is exhausted. */
    public double voltageV(double timeH) {
        return terminal.voltageV(currentA * timeH, modes.boundFromRestAh(currentA, timeH), currentA);
    }

    /**
     * Returns the time until the voltage has fallen to {@code endV}, h; 0 if it is below from the start.
     *
     * @param endV terminal voltage, V, 0 or above
     */
    public double timeToH(double endV) {
        Require.inside("endV", endV, 0, 20, "V");
        if (voltageV(0) <= endV) {
            return 0;
        }
        double exhaustedH = terminal.totalChargeAh() / currentA;
        return Root.between(timeH -> Math.max(voltageV(timeH), EXHAUSTED_V) - endV, 0, exhaustedH, TIME_TOLERANCE_H);
    }

    /** Returns the charge delivered until the voltage has fallen to {@code endV}, Ah. */
    public double deliveredAh(double endV) {
        return currentA * timeToH(endV);
    }

    /**
     * Returns points evenly spaced in time, the first at the start and the last at {@code endV}.
     *
     * @param count number of points, 2 or above
     * @param endV terminal voltage at the last point, V
     */
    public List<Point> points(int count, double endV) {
        Require.inside("count", count, 2, 1_000_000, "");
        double endH = timeToH(endV);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double timeH = endH * i / (count - 1);
            points.add(new Point(timeH, voltageV(timeH), currentA * timeH));
        }
        return List.copyOf(points);
    }
}

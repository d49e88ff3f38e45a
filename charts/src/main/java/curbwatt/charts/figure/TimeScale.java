package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;

/**
 * The unit in which a scene's time is shown.
 *
 * @param unit as written at the axis
 * @param unitS its length (s)
 * @param durationS length of the scene (s)
 */
record TimeScale(String unit, double unitS, double durationS) {

    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;
    private static final double DAY_S = 86400;
    private static final int MOST_TICKS = 12;

    static TimeScale of(double durationS) {
        if (durationS <= 3 * MINUTE_S) {
            return new TimeScale("s", 1, durationS);
        }
        if (durationS <= 2 * HOUR_S) {
            return new TimeScale("min", MINUTE_S, durationS);
        }
        // Hours up to ten days, so that the axis and the times of events, in hours and minutes, speak of the same.
        return durationS <= 10 * DAY_S ? new TimeScale("h", HOUR_S, durationS) : new TimeScale("d", DAY_S, durationS);
    }

    /** A time since the scene's start, in the unit of the axis. */
    double at(double timeS) {
        return timeS / unitS;
    }

    /** The axis from the scene's start to its end. */
    NumberAxis axis() {
        NumberAxis axis = HouseStyle.across("Time since the scene's start, " + unit);
        axis.setRange(0, at(durationS));
        axis.setTickUnit(new NumberTickUnit(step(), HouseStyle.numbers("0.##")));
        return axis;
    }

    /**
     * A time as on a clock that starts with the scene: hours and minutes, and seconds too where the whole scene is
     * short. Cut off, not rounded, as clocks do.
     */
    String clock(double timeS) {
        long seconds = (long) Math.floor(timeS + 1e-6);
        long hours = seconds / 3600;
        long minutes = seconds / 60 % 60;
        return durationS <= HOUR_S
                ? String.format(Locale.ROOT, "%d:%02d:%02d", hours, minutes, seconds % 60)
                : String.format(Locale.ROOT, "%d:%02d", hours, minutes);
    }

    private double step() {
        List<Double> steps = switch (unit) {
            case "h" -> List.of(0.25, 0.5, 1.0, 2.0, 3.0, 4.0, 6.0, 12.0, 24.0);
            case "d" -> List.of(1.0, 2.0, 5.0, 10.0, 20.0, 30.0, 50.0);
            default -> List.of(0.5, 1.0, 2.0, 5.0, 10.0, 15.0, 20.0);
        };
        return steps.stream()
                .filter(step -> at(durationS) / step <= MOST_TICKS)
                .findFirst()
                .orElse(steps.get(steps.size() - 1));
    }
}

package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.TraceRow;
import java.util.List;

/**
 * How far a trip moves if the sensor is a little wrong: the flatter the voltage, the softer the time.
 *
 * @param story the run
 */
record TripSoftness(RunStory story) {

    /** Usual error of a voltage monitor (V); common practice, no published source. */
    private static final double SENSOR_ERROR_V = 0.1;

    /** Stretch before the trip over which the fall is taken (s): long against flashes, short against the scene. */
    private static final double STRETCH_S = 600;

    /** One sentence for the first trip, if the voltage falls towards it. */
    List<String> sentences() {
        return story.result().events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .limit(1)
                .filter(trip -> fallVPerS(trip) > 0)
                .map(this::sentence)
                .toList();
    }

    private String sentence(Event trip) {
        double movedS = SENSOR_ERROR_V / fallVPerS(trip);
        return "The time at which " + PlainText.quoted(trip.subject()) + " opens: the voltage falls by "
                + PlainText.number(60_000 * fallVPerS(trip), 1) + " mV a minute there, so that a sensor that reads "
                + PlainText.number(SENSOR_ERROR_V, 1) + " V wrong moves it by about " + PlainText.time(rounded(movedS))
                + ".";
    }

    private double fallVPerS(Event trip) {
        List<TraceRow> before = story.trace().rows().stream()
                .filter(row -> row.timeS() > Math.max(trip.timeS() - STRETCH_S, phaseStartS(trip.timeS()) + 60)
                        && row.timeS() <= trip.timeS())
                .toList();
        if (before.size() < 2) {
            return 0;
        }
        TraceRow first = before.get(0);
        TraceRow last = before.get(before.size() - 1);
        return (meanV(first, trip) - meanV(last, trip)) / (last.timeS() - first.timeS());
    }

    /** Mean voltage of the node that feeds the cutoff's circuits (V). */
    private double meanV(TraceRow row, Event trip) {
        return row.equipment().isPresent() && new BatteryText(story).isBehindLink(trip.subject())
                ? row.equipment().get().nodeMeanV()
                : row.nodeMeanV();
    }

    private double phaseStartS(double timeS) {
        return story.result().phases().stream()
                .mapToDouble(phase -> phase.startS())
                .filter(startS -> startS <= timeS)
                .max()
                .orElse(0);
    }

    /** Whole minutes: more would claim too much. */
    private static double rounded(double timeS) {
        return 60 * Math.max(1, Math.round(timeS / 60));
    }
}

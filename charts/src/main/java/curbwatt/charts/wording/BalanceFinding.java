package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.EquipmentSample;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.TraceRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Who carried the load: means up to the first loss of a supply in a phase, or up to the start of an engine that is
 * started for the battery, because what is charged after it would hide what was drawn before.
 *
 * @param story the run
 */
record BalanceFinding(RunStory story) {

    /** What takes a circuit's supply away. */
    private static final Set<EventKind> LOSSES = Set.of(
            EventKind.CUTOFF_TRIPPED,
            EventKind.RUN_TIME_LIMIT_REACHED,
            EventKind.FUSE_OPENED,
            EventKind.VOLTAGE_COLLAPSED);

    /** Smallest mean current that is worth a title (A). */
    private static final double NOTICEABLE_A = 0.5;

    /** What a battery gave on average in a phase (A), up to what ends it; empty: the phase's end. */
    private record Given(PhaseSummary phase, String battery, double meanA, Optional<EventKind> until) {}

    /** The finding, without a full stop. */
    String sentence() {
        Optional<Given> added = story.result().phases().stream()
                .filter(PhaseSummary::engineRan)
                .flatMap(phase -> each(phase).stream())
                .filter(given -> given.meanA() > NOTICEABLE_A)
                .max(Comparator.comparingDouble(Given::meanA));
        if (added.isPresent()) {
            Given given = added.get();
            return "In " + PlainText.quoted(given.phase().phase()) + " " + given.battery() + " adds "
                    + PlainText.amperes(given.meanA()) + " to what the alternator gives" + until(given);
        }
        BatteryText batteries = new BatteryText(story);
        return story.result().phases().stream()
                .filter(phase -> !phase.engineRan())
                .max(Comparator.comparingDouble(PhaseSummary::meanBatteryA))
                .map(phase -> given(phase, batteries.all(), BalanceFinding::allA))
                .map(given -> "In " + PlainText.quoted(given.phase().phase()) + " " + given.battery()
                        + batteries.verb(" carries ", " carry ") + PlainText.amperes(given.meanA()) + " alone"
                        + until(given))
                .orElse("The alternator carries every load");
    }

    private List<Given> each(PhaseSummary phase) {
        BatteryText batteries = new BatteryText(story);
        List<Given> each = new ArrayList<>();
        each.add(given(phase, batteries.starter(), TraceRow::batteryMeanA));
        if (batteries.isPair()) {
            each.add(given(phase, "the auxiliary battery", BalanceFinding::auxiliaryA));
        }
        return each;
    }

    private Given given(PhaseSummary phase, String battery, ToDoubleFunction<TraceRow> currentA) {
        double endS = phase.startS() + phase.durationS();
        Optional<Event> ending = story.result().events().stream()
                .filter(event -> LOSSES.contains(event.kind()) || event.kind() == EventKind.ENGINE_STARTED)
                .filter(event -> event.timeS() > phase.startS() && event.timeS() < endS)
                .findFirst();
        double lostS = ending.map(Event::timeS).orElse(endS);
        double meanA = story.trace().rows().stream()
                .filter(row -> row.timeS() > phase.startS() && row.timeS() <= lostS)
                .mapToDouble(currentA)
                .average()
                .orElse(phase.meanBatteryA());
        return new Given(phase, battery, meanA, ending.map(Event::kind));
    }

    private static String until(Given given) {
        return given.until()
                .map(kind -> kind == EventKind.ENGINE_STARTED
                        ? ", until the engine is started for it"
                        : ", until the first supply is lost")
                .orElse("");
    }

    private static double allA(TraceRow row) {
        return row.batteryMeanA() + auxiliaryA(row);
    }

    private static double auxiliaryA(TraceRow row) {
        return row.equipment().map(EquipmentSample::batteryMeanA).orElse(0.0);
    }
}

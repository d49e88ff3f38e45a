package curbwatt.charts.run;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CircuitSummary;
import curbwatt.engine.result.LoadSummary;
import curbwatt.engine.result.WaveformPoint;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A scenario run with its heads in one of the timings that are compared.
 *
 * @param timing which
 * @param asWritten whether the scenario times its heads like this itself
 * @param story the run; its close-up is at the instant that all compared runs share
 * @param peakA largest current of all circuits together (A)
 * @param momentThatMatters close-up of the run as written at its own moment; empty for the others
 */
public record TimedRun(
        Timing timing, boolean asWritten, RunStory story, double peakA, List<WaveformPoint> momentThatMatters) {

    /** Copies the list. */
    public TimedRun {
        momentThatMatters = List.copyOf(momentThatMatters);
    }

    /** How the heads on shared clocks flash against each other. */
    public enum Timing {
        /** All at once. */
        TOGETHER,
        /** As the scenario says, where that is neither of the others. */
        AS_WRITTEN,
        /** One group after the other. */
        INTERLEAVED
    }

    /** The first trip on low voltage, if there is one. */
    public Optional<Event> trip() {
        return story.result().events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .findFirst();
    }

    /** When the first circuit lost its supply or the first load fell silent (s); empty: never. */
    public OptionalDouble firstLossS() {
        return Stream.concat(
                        story.result().circuits().stream().map(CircuitSummary::firstLostS),
                        story.result().loads().stream().map(LoadSummary::firstDropOutS))
                .flatMapToDouble(OptionalDouble::stream)
                .min();
    }

    /** Time until then, the whole run if nothing was lost (s). */
    public double heldS() {
        return firstLossS().orElse(story.result().durationS());
    }
}

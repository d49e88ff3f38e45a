package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A voltage monitor that disconnects circuits.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param senseAtNode node at which it senses; left out: the starter node
 * @param senseAtFeedEndOf circuit at whose far end it senses instead
 * @param filterS time constant of its filter (s)
 * @param sensorErrorV what the sensor reads too much (V)
 * @param warningV level below which it warns (V)
 * @param tripV trip level (V)
 * @param tripDelayS time below the trip level before it opens (s)
 * @param reclose what closes it again
 * @param runTimeLimitMin longest time with the engine off (min)
 * @param steps what it sheds before, in order
 * @param disconnects circuits that it disconnects
 */
public record CutoffEntry(
        Place place,
        Optional<String> name,
        Optional<NodeWord> senseAtNode,
        Optional<String> senseAtFeedEndOf,
        Optional<Double> filterS,
        Optional<Double> sensorErrorV,
        Optional<Double> warningV,
        Optional<Double> tripV,
        Optional<Double> tripDelayS,
        Optional<RecloseEntry> reclose,
        Optional<Double> runTimeLimitMin,
        List<StepEntry> steps,
        List<String> disconnects)
        implements ShedsCircuits {

    /** Takes missing lists as empty ones. */
    public CutoffEntry {
        steps = steps == null ? List.of() : List.copyOf(steps);
        disconnects = disconnects == null ? List.of() : List.copyOf(disconnects);
    }

    /** Returns its contacts in the order in which they are meant to open: the steps, then itself. */
    public List<ShedsCircuits> contacts() {
        return Stream.<ShedsCircuits>concat(steps.stream(), Stream.of(this)).toList();
    }
}

package curbwatt.engine.event;

import java.util.List;
import java.util.stream.Stream;

/**
 * What a run reports, for tests to ask.
 *
 * @param events in order of time
 */
public record Story(List<Event> events) {
    /** Events of a kind. */
    public List<Event> of(EventKind kind) {
        return events.stream().filter(event -> event.kind() == kind).toList();
    }

    /** The only event of a kind. */
    public Event only(EventKind kind) {
        List<Event> found = of(kind);
        if (found.size() != 1) {
            throw new AssertionError("one " + kind + " expected, found " + found + " in " + events);
        }
        return found.get(0);
    }

    /** Times of a kind (s). */
    public List<Double> timesS(EventKind kind) {
        return of(kind).stream().map(Event::timeS).toList();
    }

    /** Kinds and subjects at one instant, to a millionth of a second, in the order reported. */
    public List<String> at(double timeS) {
        return events.stream()
                .filter(event -> Math.abs(event.timeS() - timeS) < 1e-6)
                .map(Story::line)
                .toList();
    }

    /** Kinds and subjects of events of some kinds, in the order reported. */
    public List<String> lines(EventKind... kinds) {
        List<EventKind> wanted = Stream.of(kinds).toList();
        return events.stream()
                .filter(event -> wanted.contains(event.kind()))
                .map(Story::line)
                .toList();
    }

    private static String line(Event event) {
        return event.kind() + " " + event.subject();
    }
}

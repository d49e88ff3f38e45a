package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.Palette;
import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A mark for one event, or for several of a kind that lie too close to tell apart.
 *
 * @param events in order of time, at least one
 */
record EventLabel(List<Event> events) {

    /** Events nearer than this share of the scene are one mark: about the width of a line. */
    private static final double CLOSE_FRACTION = 0.006;

    private static final int LONGEST_SUBJECT = 20;

    EventLabel {
        events = List.copyOf(events);
    }

    /** The marks of a run, the ones that matter most first; starts are marked only where nobody is at the key. */
    static List<EventLabel> of(RunStory story) {
        Optional<String> device =
                story.scenario().vehicle().engine().automaticStart().map(AutomaticStart::name);
        return of(
                story.result().events().stream()
                        .filter(event -> event.kind() != EventKind.ENGINE_STARTED
                                || device.filter(event.subject()::equals).isPresent())
                        .toList(),
                story.result().durationS());
    }

    /** The marks of some events. */
    static List<EventLabel> of(List<Event> events, double durationS) {
        List<List<Event>> groups = new ArrayList<>();
        for (Event event : events) {
            if (rank(event.kind()) >= 0) {
                groupOf(event, groups, CLOSE_FRACTION * durationS).add(event);
            }
        }
        List<EventLabel> labels =
                new ArrayList<>(groups.stream().map(EventLabel::new).toList());
        Set<EventKind> seen = new HashSet<>();
        Set<EventLabel> repeats = new HashSet<>();
        labels.stream().filter(label -> !seen.add(label.kind())).forEach(repeats::add);
        labels.sort(Comparator.comparing((EventLabel label) -> repeats.contains(label))
                .thenComparing(label -> rank(label.kind()))
                .thenComparing(EventLabel::timeS));
        return labels;
    }

    EventKind kind() {
        return events.get(0).kind();
    }

    /** When the first of them happened (s). */
    double timeS() {
        return events.get(0).timeS();
    }

    /** What happened and when. */
    String text(TimeScale scale) {
        return words() + " " + scale.clock(timeS());
    }

    /** Whether the voltage of the event is one of the voltages shown. */
    boolean hasShownVoltage() {
        return switch (kind()) {
            case WARNING_BEGAN, CUTOFF_TRIPPED, RUN_TIME_LIMIT_REACHED, CUTOFF_RECLOSED -> true;
            default -> false;
        };
    }

    Color color() {
        return switch (kind()) {
            case CUTOFF_RECLOSED, LINK_CLOSED, LINK_OPENED, ENGINE_STARTED, IDLE_RAISED, IDLE_RELEASED ->
                Palette.HELD.color();
            case WARNING_BEGAN -> Palette.WARNING.color();
            default -> Palette.ALARM.color();
        };
    }

    private String words() {
        int count = events.size();
        String times = count > 1 ? " ×" + count : "";
        return switch (kind()) {
            case CUTOFF_TRIPPED -> "trip" + times;
            case RUN_TIME_LIMIT_REACHED -> "run-time limit" + times;
            case CUTOFF_RECLOSED -> "reclosed" + times;
            case LINK_CLOSED -> "link closes" + times;
            case LINK_OPENED -> "link opens" + times;
            case WARNING_BEGAN -> "warning" + times;
            case IDLE_RAISED -> "idle raised" + times;
            case IDLE_RELEASED -> "idle released" + times;
            case ENGINE_STARTED -> "automatic start" + times;
            case VOLTAGE_COLLAPSED -> "voltage collapse" + times;
            case ENGINE_DID_NOT_START -> "engine did not start";
            case PACK_STOPPED -> "pack stops" + times;
            case FUSE_OPENED -> "fuse opens: " + subject();
            case RESTART_MARGIN_LOST -> "restart no longer assured";
            case LOAD_DROPPED_OUT -> count > 1 ? count + " drop-outs" : subject() + " drops out";
            default -> kind().name();
        };
    }

    private String subject() {
        String subject = events.get(0).subject();
        return subject.length() <= LONGEST_SUBJECT
                ? subject
                : subject.substring(0, LONGEST_SUBJECT).strip() + "…";
    }

    private static List<Event> groupOf(Event event, List<List<Event>> groups, double closeS) {
        for (List<Event> group : groups) {
            Event first = group.get(0);
            if (first.kind() == event.kind() && event.timeS() - first.timeS() <= closeS) {
                return group;
            }
        }
        List<Event> group = new ArrayList<>();
        groups.add(group);
        return group;
    }

    /** What matters most comes first; negative: not marked, because the phases show it or because it is good news. */
    private static int rank(EventKind kind) {
        return switch (kind) {
            case CUTOFF_TRIPPED, ENGINE_DID_NOT_START, FUSE_OPENED, PACK_STOPPED, VOLTAGE_COLLAPSED -> 0;
            case RUN_TIME_LIMIT_REACHED, RESTART_MARGIN_LOST -> 1;
            case LOAD_DROPPED_OUT -> 2;
            case CUTOFF_RECLOSED, LINK_CLOSED, LINK_OPENED -> 3;
            case WARNING_BEGAN -> 4;
            case ENGINE_STARTED -> 5;
            case IDLE_RAISED, IDLE_RELEASED -> 6;
            case PHASE_BEGAN,
                    ENGINE_STOPPED,
                    WARNING_ENDED,
                    LOAD_RETURNED,
                    PACK_RELEASED,
                    RESTART_MARGIN_REGAINED,
                    SCENE_ENDED -> -1;
        };
    }
}

package curbwatt.charts.wording;

import curbwatt.engine.event.Event;

/** One sentence for an event. */
public final class EventText {

    private EventText() {}

    /** What happened, with the voltage that the subject saw; time and charge stand beside it in the table. */
    public static String sentence(Event event) {
        String subject = PlainText.quoted(event.subject());
        String at = " at " + PlainText.volts(event.voltageV());
        String cranking = Double.isInfinite(event.voltageV())
                ? "the battery cannot deliver the cranking current"
                : PlainText.volts(event.voltageV()) + " while cranking";
        return switch (event.kind()) {
            case PHASE_BEGAN -> "Phase " + subject + " begins.";
            case ENGINE_STARTED -> "The engine starts: " + cranking + ".";
            case ENGINE_STOPPED -> "The engine is switched off.";
            case IDLE_RAISED -> subject + " raises the engine's idle speed" + at + ".";
            case IDLE_RELEASED -> subject + " lets the engine's idle speed go back" + at + ".";
            case ENGINE_DID_NOT_START -> "The engine does not start: " + cranking + ". It stays off.";
            case WARNING_BEGAN -> subject + " warns" + at + ".";
            case WARNING_ENDED -> subject + " stops warning" + at + ".";
            case CUTOFF_TRIPPED -> subject + " opens" + at + ".";
            case RUN_TIME_LIMIT_REACHED -> subject + " opens: its run-time limit with the engine off is reached.";
            case CUTOFF_RECLOSED -> subject + " closes again" + at + ".";
            case FUSE_OPENED -> "The fuse of " + subject + " opens" + at + ".";
            case PACK_STOPPED -> "The protection of " + subject + " acts" + at + ".";
            case PACK_RELEASED -> "The protection of " + subject + " lets go" + at + ".";
            case LINK_CLOSED -> subject + " joins the batteries" + at + ".";
            case LINK_OPENED -> subject + " parts the batteries" + at + ".";
            case LOAD_DROPPED_OUT -> subject + " drops out" + at + ".";
            case LOAD_RETURNED -> subject + " is back" + at + ".";
            case RESTART_MARGIN_LOST -> "From here on the engine would not start.";
            case RESTART_MARGIN_REGAINED -> "From here on the engine would start again.";
            case VOLTAGE_COLLAPSED ->
                "The voltage at " + Places.named(event.subject()) + " collapses" + at
                        + ": the loads ask for more power than can reach them.";
            case SCENE_ENDED -> "The scene ends.";
        };
    }
}

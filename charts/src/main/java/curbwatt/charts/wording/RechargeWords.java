package curbwatt.charts.wording;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.study.recharge.Limit;
import curbwatt.engine.study.recharge.Way;
import curbwatt.engine.study.recharge.WayBack;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Names of the ways to recharge, and of what keeps charge from coming back. */
public final class RechargeWords {

    private RechargeWords() {}

    /** A way as the heading of a row or a line. */
    public static String name(Way way) {
        return (way.mode() == EngineMode.DRIVING ? "Driving" : "Idling") + " at " + speed(way.engineRpm());
    }

    /** Ways that are as fast as each other, the slowest engine first. */
    public static String name(List<WayBack> group) {
        Way first = group.get(0).way();
        Way last = group.get(group.size() - 1).way();
        return first.equals(last)
                ? name(first)
                : "Idling at " + PlainText.number(first.engineRpm(), 0) + " to " + speed(last.engineRpm());
    }

    /** A way inside a sentence. */
    static String plain(Way way) {
        return name(way).toLowerCase(Locale.ROOT);
    }

    /** An engine speed. */
    public static String speed(double engineRpm) {
        return PlainText.number(engineRpm, 0) + " /min";
    }

    /** A time that may never come. */
    public static String time(OptionalDouble timeS) {
        return timeS.isPresent() ? PlainText.time(timeS.getAsDouble()) : "not within a day";
    }

    /** Why not all of it comes back, in a few words; empty: it does. */
    public static String limit(WayBack back) {
        return back.limit().map(limit -> limit(limit, back)).orElse("");
    }

    private static String limit(Limit limit, WayBack back) {
        return switch (limit) {
            case DOES_NOT_START -> "the engine does not start";
            case ALTERNATOR ->
                back.mostFraction() > 0
                        ? "the alternator leaves too little beyond the loads"
                        : "the alternator does not carry the loads";
            case PACK_REFUSES -> "the protection inside the pack refuses charge";
            case ACCEPTANCE -> "the battery takes ever less at this voltage";
        };
    }
}

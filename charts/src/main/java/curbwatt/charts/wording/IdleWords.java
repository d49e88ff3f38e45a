package curbwatt.charts.wording;

import curbwatt.engine.study.idle.IdleWay;
import curbwatt.engine.study.idle.Lever;
import java.util.Locale;
import java.util.Optional;

/** Names of the ways of standing, and of what the answer depends on. */
public final class IdleWords {

    private IdleWords() {}

    /** A way as a heading of a row or a line. */
    public static String name(IdleWay way) {
        return switch (way) {
            case IDLING -> "Idling";
            case HIGH_IDLE -> "Idle control";
            case AUTOMATIC_START -> "Automatic start";
            case ENGINE_OFF -> "Engine off";
        };
    }

    /** A way for other tools. */
    public static String key(IdleWay way) {
        return way.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What to do. */
    static String advice(IdleWay way) {
        return switch (way) {
            case IDLING -> "Let the engine idle; no device is needed";
            case HIGH_IDLE -> "Let the engine idle, and let an idle control raise its speed";
            case AUTOMATIC_START -> "Switch the engine off, and let an automatic start look after the battery";
            case ENGINE_OFF -> "Switch the engine off; the battery carries the scene";
        };
    }

    /** A way inside a sentence. */
    static String plain(IdleWay way) {
        return switch (way) {
            case IDLING -> "idling without a device";
            case HIGH_IDLE -> "idling with the idle control";
            case AUTOMATIC_START -> "the automatic start";
            case ENGINE_OFF -> "the engine off";
        };
    }

    /** What the answer changes to. */
    static String plain(Optional<IdleWay> way) {
        return way.map(IdleWords::plain).orElse("none: no way holds what is asked");
    }

    /** What the answer depends on, as a heading. */
    public static String name(Lever lever) {
        return switch (lever) {
            case SCENE_HOURS -> "Time of standing";
            case ALTERNATOR_IDLE -> "Alternator's output at its label's low speed";
            case FUEL_PRICE -> "Price of fuel";
            case SCENES_PER_YEAR -> "Scenes a year";
            case IDLE_CONTROL_PRICE -> "Price of the idle control";
            case AUTOMATIC_START_PRICE -> "Price of the automatic start";
        };
    }
}

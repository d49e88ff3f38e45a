package curbwatt.charts.style;

import java.awt.Color;
import java.util.List;
import java.util.Locale;

/**
 * Colours by what they stand for.
 *
 * <p>The hues are those of Okabe and Ito, "Color Universal Design" (2008), which readers with the usual kinds of
 * colour blindness tell apart; some are darkened so that thin lines and small text stay legible on white. Nothing
 * is said by colour alone: lines are labelled, and what lies side by side also differs in lightness, so that a
 * grey print still reads.
 */
public enum Palette {
    /** Titles and figures. */
    INK("#1b2430"),
    /** Subtitles, axis labels, remarks. */
    MUTED("#5a6675"),
    /** Axis lines and leaders. */
    RULE("#aab2bd"),
    /** Grid. */
    HAIRLINE("#e3e6ea"),
    /** Background. */
    PAPER("#ffffff"),
    /** Background of a phase with the engine off. */
    ENGINE_OFF("#eef0f3"),
    /** Background of a phase in which the vehicle is parked. */
    PARKED("#e2e5ea"),
    /** Node voltage. */
    VOLTAGE("#0072b2"),
    /** Range of the node voltage between two samples. */
    VOLTAGE_RANGE("#a9cfe6"),
    /** Sensed voltage of a cutoff, or its reading. */
    SENSED("#a34a84"),
    /** Range of the sensed voltage between two samples. */
    SENSED_RANGE("#d9b3cc"),
    /** The same of a second sense point. */
    SENSED_OTHER_RANGE("#e8cf9c"),
    /** Equipment node and its battery. */
    EQUIPMENT("#6a3d9a"),
    /** Range of the equipment node's voltage between two samples. */
    EQUIPMENT_RANGE("#cdbfe3"),
    /** State of charge. */
    CHARGE("#007a5a"),
    /** Alternator. */
    ALTERNATOR("#e69f00"),
    /** Alternator, where its colour carries text. */
    ALTERNATOR_INK("#8a5a00"),
    /** Battery as a source. */
    BATTERY("#1f78b4"),
    /** Fastest of several discharges. */
    BATTERY_PALE("#4a9fd0"),
    /** Slowest of several discharges. */
    BATTERY_DEEP("#0b3350"),
    /** Battery taking charge. */
    CHARGING("#bfe3f7"),
    /** Auxiliary battery taking charge. */
    EQUIPMENT_CHARGING("#dccdf0"),
    /** Current of the loads, as an area. */
    LOAD("#8d98a6"),
    /** Demand of the loads. */
    DEMAND("#1b2430"),
    /** Levels that make something happen, and what went wrong. */
    ALARM("#b84a00"),
    /** Levels that only warn. */
    WARNING("#8a5a00"),
    /** What came back or held. */
    HELD("#007a5a"),
    /** In a map, a setting that works with little room. */
    ROOM_LITTLE("#cfe6f5"),
    /** In a map, a setting that works with much room. */
    ROOM_MUCH("#0b5a94"),
    /** In a map, cut off too early. */
    TOO_EARLY("#f2c46d"),
    /** In a map, a nuisance trip. */
    NUISANCE("#fbeeb8"),
    /** In a map, chatter. */
    CHATTER("#d9a0bd"),
    /** In a map, the engine would not start. */
    NO_START("#9a5b43"),
    /** In a map, any other reason for which a setting fails. */
    OTHER_FAILURE("#c3c8cf"),
    /** In a map, what can't be set. */
    NOT_POSSIBLE("#eef0f3");

    /** Groups that are stacked: neighbours differ in lightness as well as in hue. */
    private static final List<Color> GROUPS = List.of(
            Color.decode("#33475b"),
            Color.decode("#e8d96a"),
            Color.decode("#8a3f70"),
            Color.decode("#63c2a6"),
            Color.decode("#a3481a"),
            Color.decode("#e6b3d0"),
            Color.decode("#5f6b78"));

    /** Runs that are laid over each other: told apart by hue, by lightness, and by the dashes of {@link HouseStyle}. */
    private static final List<Color> COMPARED = List.of(
            Color.decode("#0072b2"),
            Color.decode("#b84a00"),
            Color.decode("#007a5a"),
            Color.decode("#1b2430"),
            Color.decode("#a34a84"),
            Color.decode("#8a5a00"));

    private final Color color;

    Palette(String hex) {
        this.color = Color.decode(hex);
    }

    /** The colour, opaque. */
    public Color color() {
        return color;
    }

    /** The colour as in a style sheet, {@code #rrggbb}. */
    public String css() {
        return String.format(Locale.ROOT, "#%06x", color.getRGB() & 0xffffff);
    }

    /** How many groups of a stack can be told apart. */
    public static int groups() {
        return GROUPS.size();
    }

    /**
     * Colour of a group in a stack.
     *
     * @param place its place from below, 0 … {@link #groups()} − 1
     */
    public static Color group(int place) {
        return GROUPS.get(place);
    }

    /** How many runs can be laid over each other. */
    public static int compared() {
        return COMPARED.size();
    }

    /**
     * Colour of one of several runs in one picture.
     *
     * @param place its place, 0 … {@link #compared()} − 1
     */
    public static Color compared(int place) {
        return COMPARED.get(place);
    }
}

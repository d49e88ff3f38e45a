package curbwatt.charts.wording;

import curbwatt.engine.study.settings.Cell;
import curbwatt.engine.study.settings.FailureKind;
import curbwatt.engine.study.settings.Fate;
import curbwatt.engine.study.settings.Recommendation;
import curbwatt.engine.study.settings.Remedy;
import curbwatt.engine.study.settings.Room;
import curbwatt.engine.study.settings.SettingsResult;
import curbwatt.engine.study.settings.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a search for settings found, in sentences.
 *
 * @param result what was found
 */
public record SettingsFinding(SettingsResult result) {

    /** The answer in a sentence. */
    public String headline() {
        return result.recommendation().map(this::advice).orElseGet(this::none);
    }

    /** A title for the map. */
    public String title() {
        return result.recommendation().map(this::title).orElse("No setting does what was asked");
    }

    private String title(Recommendation advice) {
        String setting = SettingText.of(advice.cell().setting());
        return advice.room().roomFactor() > 0
                ? setting + " has the most room: "
                        + SettingText.room(advice.room().roomFactor()) + " times the spread"
                : "No setting has any room; " + setting + " works only as the scenario stands";
    }

    /** Why, in sentences. */
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        result.recommendation()
                .ifPresentOrElse(advice -> reasons.addAll(reasons(advice)), () -> reasons.addAll(remedies()));
        reasons.add(present());
        return List.copyOf(reasons);
    }

    /** The few figures beside the answer. */
    public List<KeyFigure> keyFigures() {
        if (result.recommendation().isEmpty()) {
            return List.of(new KeyFigure(
                    "Settings tried", Integer.toString(result.map().cells().size()), "none does what was asked"));
        }
        Recommendation advice = result.recommendation().get();
        Fate fate = advice.cell().fate();
        List<KeyFigure> figures = new ArrayList<>();
        figures.add(new KeyFigure("Recommended", SettingText.of(advice.cell().setting()), closes(advice)));
        figures.add(new KeyFigure(
                "Room",
                SettingText.room(advice.room().roomFactor()) + " × spread",
                advice.room().standsTheSpread() ? "stands the whole spread" : "does not stand the whole spread"));
        fate.heldS()
                .ifPresent(
                        heldS -> figures.add(new KeyFigure("Held", PlainText.time(heldS), "as the scenario stands")));
        fate.restartMarginV()
                .ifPresent(marginV -> figures.add(
                        new KeyFigure("Least start margin", PlainText.volts(marginV), "as the scenario stands")));
        figures.add(new KeyFigure(
                "Coarse steps",
                SettingText.of(advice.range()),
                advice.range().settings() + " settings tried, "
                        + (advice.range().enoughFactor() > 0
                                ? "room " + SettingText.room(advice.range().enoughFactor()) + " or more"
                                : "all work as the scenario stands")));
        return List.copyOf(figures);
    }

    private String closes(Recommendation advice) {
        return "closes " + SettingText.closes(advice.cell().setting().reclose());
    }

    private String advice(Recommendation advice) {
        String set = "Set " + PlainText.quoted(result.cutoff()) + " to "
                + SettingText.of(advice.cell().setting())
                + (result.map().recloses().size() > 1
                        ? ", closing "
                                + SettingText.closes(advice.cell().setting().reclose())
                        : "");
        Fate fate = advice.cell().fate();
        String held = fate.heldS().stream()
                .mapToObj(heldS -> "holds " + PlainText.time(heldS))
                .findFirst()
                .orElse("does what was asked");
        String starts = fate.restartMarginV().stream()
                .mapToObj(marginV -> " and starts with " + PlainText.volts(marginV) + " of margin")
                .findFirst()
                .orElse("");
        double room = advice.room().roomFactor();
        return set + ": it " + held + starts
                + (room > 0
                        ? ", and has room for " + SettingText.room(room) + " times the spread"
                        : ", but only just as the scenario stands: no setting has any room")
                + (room > 0 && room < 1 ? ", which is less than all of it." : ".");
    }

    private List<String> reasons(Recommendation advice) {
        List<String> reasons = new ArrayList<>();
        reasons.add(end(advice.room()));
        advice.sides().forEach(side -> reasons.add(side(advice, side)));
        reasons.add("A device with coarse steps may take anything from " + SettingText.of(advice.range())
                + ": every setting tried there "
                + (advice.range().enoughFactor() > 0
                        ? "has a room of " + SettingText.room(advice.range().enoughFactor()) + " or more."
                        : "works as the scenario stands."));
        return reasons;
    }

    private String end(Room room) {
        return (room.roomFactor() > 0 ? "Its room ends " : "It fails already ")
                + room.end()
                        .map(end -> "where " + ending(end) + ".")
                        .orElse("nowhere within " + SettingText.room(room.roomFactor()) + " times the spread.");
    }

    /** "the sensor reads 0.12 V too little: then it would be cut off 12 min too early". */
    public String ending(Room.End end) {
        return SettingText.change(end.direction(), result.plan().spread(), end.distanceFactor()) + ": then "
                + end.fate().map(SettingsFinding::it).orElse("the change is more than the model can take");
    }

    private static String it(Fate fate) {
        String clause = SettingText.clause(fate);
        return clause.startsWith("'") ? clause : "it " + clause;
    }

    private String side(Recommendation advice, Recommendation.SideLimit limit) {
        String way = switch (limit.side()) {
            case LOWER_LEVEL -> "Lower";
            case HIGHER_LEVEL -> "Higher";
            case SHORTER_DELAY -> "Shorter";
            case LONGER_DELAY -> "Longer";
        };
        if (limit.failing().isPresent()) {
            Cell failing = limit.failing().get();
            return way + ": at " + alone(failing, limit.side()) + " " + it(failing.fate()) + ".";
        }
        Optional<Recommendation.Neighbour> next = next(advice, limit.side());
        if (next.isEmpty()) {
            return way + ": not tried; it lies at the end of what was, " + edge(limit.side()) + ".";
        }
        return way + ": nothing fails as the scenario stands up to the end of what was tried, " + edge(limit.side())
                + beside(advice.room(), next.get(), limit.side()) + ".";
    }

    /** How the next setting compares; the recommended one need not have more room, several may have as much. */
    private String beside(Room best, Recommendation.Neighbour next, Side side) {
        String room = SettingText.room(next.room().roomFactor());
        String ends =
                next.room().end().map(end -> ", and ends where " + ending(end)).orElse("");
        boolean less = !room.equals(SettingText.room(best.roomFactor()));
        return (less ? ", but already at " : "; at ") + alone(next.cell(), side) + " the room is " + room
                + (less ? "" : " too") + ends;
    }

    private static Optional<Recommendation.Neighbour> next(Recommendation advice, Side side) {
        return advice.neighbours().stream()
                .filter(next -> next.cell().level() == advice.cell().level() + side.levels()
                        && next.cell().delay() == advice.cell().delay() + side.delays())
                .findFirst();
    }

    /** The trip level or the delay of a setting, whichever a side changes. */
    private static String alone(Cell cell, Side side) {
        return side.levels() != 0
                ? PlainText.volts(cell.setting().tripV())
                : SettingText.delay(cell.setting().tripDelayS());
    }

    private String edge(Side side) {
        List<Double> levels = result.map().tripLevelsV();
        List<Double> delays = result.map().tripDelaysS();
        return switch (side) {
            case LOWER_LEVEL -> PlainText.volts(levels.get(0));
            case HIGHER_LEVEL -> PlainText.volts(levels.get(levels.size() - 1));
            case SHORTER_DELAY -> SettingText.delay(delays.get(0));
            case LONGER_DELAY -> SettingText.delay(delays.get(delays.size() - 1));
        };
    }

    private String present() {
        String now = "As the scenario has it, " + SettingText.of(result.present()) + ", ";
        return now + (result.presentFate().isMet() ? "it does what was asked." : it(result.presentFate()) + ".");
    }

    private String none() {
        String kinds = result.map().cells().stream()
                .map(cell -> cell.fate().failures().get(0).kind())
                .distinct()
                .sorted()
                .map(SettingText::reason)
                .collect(Collectors.joining(", "));
        String help = result.remedies().stream()
                .filter(remedy -> remedy.amount().isPresent())
                .map(SettingsFinding::amount)
                .collect(Collectors.joining(", or "));
        return "No setting of " + PlainText.quoted(result.cutoff()) + " does what was asked (" + kinds + ")"
                + (help.isEmpty() ? "." : "; one would with " + help + ".");
    }

    private List<String> remedies() {
        return result.remedies().stream().map(SettingsFinding::sentence).toList();
    }

    private static String sentence(Remedy remedy) {
        if (remedy.amount().isEmpty()) {
            return switch (remedy.kind()) {
                case MORE_CAPACITY -> "Not even " + PlainText.number(remedy.most(), 0) + " times the battery would do.";
                case LESS_LOAD -> "Not even loads of " + PlainText.percent(remedy.most()) + " would do.";
                case FASTER_IDLE -> "Not even an idle at " + PlainText.number(remedy.most(), 0) + " /min would do.";
                case IDLING_INSTEAD_OF_OFF -> "Not even an engine that idles almost throughout would do.";
            };
        }
        String text = amount(remedy);
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ": then "
                + remedy.setting().map(SettingText::of).orElse("a setting") + " works, just.";
    }

    private static String amount(Remedy remedy) {
        double amount = remedy.amount().orElseThrow();
        return switch (remedy.kind()) {
            case MORE_CAPACITY -> PlainText.number(100 * (amount - 1), 0) + " % more battery";
            case LESS_LOAD -> PlainText.number(100 * (1 - amount), 0) + " % less load";
            case FASTER_IDLE -> "an idle control at " + PlainText.number(amount, 0) + " /min";
            case IDLING_INSTEAD_OF_OFF ->
                "the engine idling for the last " + PlainText.number(100 * amount, 0)
                        + " % of each phase in which it is off";
        };
    }

    /** How many settings fail at what, each with its first reason; and how many work. */
    public List<List<String>> counts() {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("works", Integer.toString(result.map().working().size())));
        for (FailureKind kind : FailureKind.values()) {
            long count = result.map().cells().stream()
                    .filter(cell ->
                            !cell.works() && cell.fate().failures().get(0).kind() == kind)
                    .count();
            if (count > 0) {
                lines.add(List.of(SettingText.reason(kind), Long.toString(count)));
            }
        }
        return lines;
    }
}

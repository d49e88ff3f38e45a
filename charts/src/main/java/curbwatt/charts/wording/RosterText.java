package curbwatt.charts.wording;

import curbwatt.charts.run.RosterStory;
import curbwatt.engine.days.BatteryDays;
import curbwatt.engine.days.Day;
import curbwatt.engine.days.RosterResult;
import curbwatt.engine.days.Trend;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What came of a roster, in words.
 *
 * @param story the roster and its result
 */
public record RosterText(RosterStory story) {

    /** What kind of prediction it is; printed under every one. */
    public static final String CAUTION = "Flashing and duty run as their mean, and the battery does not age in the run:"
            + " a trip may come an hour earlier or later, and life is an order of magnitude.";

    private static final double SECONDS_PER_HOUR = 3600;
    private static final int YEAR_DAYS = 365;

    /** The answer in one sentence or two. */
    public String sentence() {
        RosterResult result = story.result();
        String all = "all " + PlainText.count(result.days().size(), "day");
        String answer = switch (result.course()) {
            case KEEPS_UP ->
                "It keeps up: the engine starts on " + all + ", no battery's charge goes down, and the lowest is "
                        + PlainText.percent(lowestFraction()) + ".";
            case HELD_BY_CUTOFF ->
                "It is held up by the cutoff alone: the engine starts on " + all + ", but on " + result.daysWithTrips()
                        + " of them equipment is switched off on low voltage.";
            case CREEPS_DOWN ->
                "It creeps down: " + PlainText.quoted(fastest().battery()) + " loses "
                        + weekly(fastest().trend().orElseThrow()) + " a week.";
            case DOES_NOT_START -> "On day " + result.failedStartDay().orElseThrow() + " the engine does not start.";
            case TOO_SHORT -> "The engine starts on " + all + "; they are too few to say where the charge is going.";
        };
        return answer + unasked();
    }

    private String unasked() {
        RosterResult result = story.result();
        int lost = result.lostMarginDay().orElse(Integer.MAX_VALUE);
        if (lost >= result.failedStartDay().orElse(Integer.MAX_VALUE)) {
            return "";
        }
        return " From day " + lost + " on there are times at which it would not start, if it were asked to.";
    }

    private BatteryDays fastest() {
        return story.result().batteries().stream()
                .min(Comparator.comparingDouble(
                        battery -> battery.trend().orElseThrow().weeklyFraction()))
                .orElseThrow();
    }

    private double lowestFraction() {
        return story.result().batteries().stream()
                .mapToDouble(BatteryDays::lowestChargeFraction)
                .min()
                .orElseThrow();
    }

    private static String weekly(Trend trend) {
        return PlainText.number(100 * Math.abs(trend.weeklyFraction()), 1) + " % of its charge";
    }

    /** What was run. */
    public String subject() {
        return story.scenario().vehicle().name() + ", "
                + PlainText.count(story.result().days().size(), "day") + " of a pattern of "
                + PlainText.count(story.roster().pattern().size(), "day");
    }

    /** Names and figures, line by line. */
    public List<List<String>> figures() {
        List<List<String>> lines = new ArrayList<>();
        story.result().batteries().forEach(battery -> lines.addAll(figures(battery)));
        List<Day> days = story.result().countedDays();
        double runH = days.stream().mapToDouble(Day::engineRunS).sum() / SECONDS_PER_HOUR;
        int starts = days.stream().mapToInt(Day::starts).sum();
        lines.add(List.of(
                "cutoff trips",
                Integer.toString(days.stream().mapToInt(Day::trips).sum())));
        String until = days.size() < story.result().days().size() ? ", until it did not" : "";
        lines.add(List.of("engine", PlainText.number(runH, 0) + " h, " + PlainText.count(starts, "start") + until));
        double litres = days.stream().mapToDouble(Day::fuelLitres).sum();
        if (litres > 0) {
            lines.add(List.of("", PlainText.number(litres, 0) + " L of fuel, as a standing engine burns it"));
        }
        return lines;
    }

    private List<List<String>> figures(BatteryDays battery) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of(
                battery.battery(),
                "ends at " + PlainText.percent(battery.endChargeFraction()) + ", lowest "
                        + PlainText.percent(battery.lowestChargeFraction())));
        battery.trend().ifPresent(trend -> lines.add(List.of("", trend(trend))));
        lines.add(List.of(
                "",
                PlainText.ampereHours(battery.throughput().dischargedAh()) + " taken out, "
                        + PlainText.number(battery.fullDischarges(), 1) + " full discharges; deepest swing "
                        + PlainText.percent(battery.cycles().deepestFraction())));
        battery.life()
                // a battery that fails within days does not live for years
                .filter(life -> story.result().failedStartDay().isEmpty() && Double.isFinite(life.highDays()))
                .ifPresent(life -> lines.add(List.of(
                        "",
                        "by cycling alone it would last " + years(life.lowDays()) + " to " + years(life.highDays())
                                + " years")));
        return lines;
    }

    static String trend(Trend trend) {
        String where = " (day " + trend.fromDay() + " to day " + trend.toDay() + ")";
        if (Math.abs(trend.weeklyFraction()) <= Trend.LEVEL_WEEKLY_FRACTION) {
            return "its charge is level" + where;
        }
        return (trend.isDown() ? "loses " : "gains ") + weekly(trend) + " a week" + where;
    }

    /** A life in years, as few digits as it deserves. */
    public static String years(double days) {
        double years = days / YEAR_DAYS;
        return PlainText.number(years, years < 3 ? 1 : 0);
    }

    /** The words above the picture of what goes in and out: whether the one makes up for the other. */
    public Heading throughput() {
        double outAh = perDay(battery -> battery.throughput().dischargedAh());
        double inAh = perDay(battery -> battery.throughput().chargedAh());
        return new Heading(
                "A mean day takes out " + PlainText.ampereHours(outAh) + " and puts back "
                        + PlainText.ampereHours(inAh),
                "At the terminals, day by day; charging loses a little, and the parked vehicle draws too");
    }

    private double perDay(ToDoubleFunction<BatteryDays> charge) {
        return story.result().batteries().stream().mapToDouble(charge).sum()
                / story.result().countedDays().size();
    }

    /** The words above the picture. */
    public Heading heading() {
        return new Heading(sentence(), subject() + ". State of charge at each day's end, and its lowest on that day.");
    }
}

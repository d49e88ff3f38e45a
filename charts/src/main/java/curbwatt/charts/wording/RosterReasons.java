package curbwatt.charts.wording;

import curbwatt.charts.run.RosterStory;
import curbwatt.engine.days.BatteryDays;
import curbwatt.engine.days.Day;
import curbwatt.engine.days.RosterResult;
import curbwatt.engine.days.Trend;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Why a roster came out as it did, and what not to trust in it.
 *
 * @param story the roster and its result
 */
public record RosterReasons(RosterStory story) {

    /** What is assumed in every roster. */
    public static final List<String> ASSUMED = List.of(
            "Loads that flash, have a duty or an inrush run as their mean current.",
            "Each day begins at midnight with the phases that its plan names; for the rest of its 24 hours the vehicle is"
                    + " parked.",
            "Nobody charges the batteries or jump-starts the engine, and they do not age within the run.",
            "Every day of a kind is alike, its air included: there are no seasons.");

    /** Below this a lead battery that stays there sulphates; common practice, no published source. */
    private static final double LOW_FRACTION = 0.8;

    private static final double DAY_S = 86400;

    /** What happened, battery by battery, and what failed. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        for (int place = 0; place < story.result().batteries().size(); place++) {
            BatteryDays battery = story.result().batteries().get(place);
            sentences.add(PlainText.quoted(battery.battery()) + " goes from "
                    + PlainText.percent(battery.startChargeFraction()) + " to "
                    + PlainText.percent(battery.endChargeFraction()) + ", lowest "
                    + PlainText.percent(battery.lowestChargeFraction()) + " on day "
                    + lowestDay(place).day() + trend(battery)
                    + ".");
            sentences.add(balance(battery));
        }
        failure().ifPresent(sentences::add);
        if (story.result().trips() > 0) {
            sentences.add(trips());
        }
        return sentences;
    }

    private static String trend(BatteryDays battery) {
        return battery.trend().map(trend -> "; " + RosterText.trend(trend)).orElse("; too few days for a trend");
    }

    private String balance(BatteryDays battery) {
        int days = story.result().countedDays().size();
        double outAh = battery.throughput().dischargedAh() / days;
        double inAh = battery.throughput().chargedAh() / days;
        return "On a mean day " + PlainText.ampereHours(outAh) + " are taken out of it and "
                + PlainText.ampereHours(inAh) + " put back.";
    }

    private Optional<String> failure() {
        return story.result().run().events().stream()
                .filter(event -> event.kind() == EventKind.ENGINE_DID_NOT_START)
                .findFirst()
                .map(event -> "Day " + dayOf(event) + ", " + PlainText.clock(event.timeS() % DAY_S) + ": "
                        + EventText.sentence(event) + " The starter battery is at "
                        + PlainText.percent(event.stateOfChargeFraction()) + ". What follows is not counted.");
    }

    private String trips() {
        RosterResult result = story.result();
        Event first = result.run().events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .findFirst()
                .orElseThrow();
        return PlainText.quoted(first.subject()) + " opens first on day " + dayOf(first) + ", "
                + PlainText.clock(first.timeS() % DAY_S) + "; in all there are "
                + PlainText.count(result.trips(), "trip") + " on "
                + PlainText.count(result.daysWithTrips(), "day") + ".";
    }

    private static int dayOf(Event event) {
        return (int) (event.timeS() / DAY_S) + 1;
    }

    /** The few figures that stand beside the answer. */
    public List<KeyFigure> keyFigures() {
        RosterResult result = story.result();
        List<KeyFigure> figures = new ArrayList<>();
        boolean pair = result.batteries().size() > 1;
        for (int place = 0; place < result.batteries().size(); place++) {
            BatteryDays battery = result.batteries().get(place);
            figures.add(new KeyFigure(
                    pair ? "Lowest charge, " + battery.battery() : "Lowest charge",
                    PlainText.percent(battery.lowestChargeFraction()),
                    "on day " + lowestDay(place).day() + ", at the end "
                            + PlainText.percent(battery.endChargeFraction())));
        }
        figures.add(new KeyFigure(
                "Starts",
                result.failedStartDay().isPresent()
                        ? "until day " + result.failedStartDay().getAsInt()
                        : "on all " + PlainText.count(result.days().size(), "day"),
                result.lostMarginDay().isPresent()
                        ? "margin lost from day " + result.lostMarginDay().getAsInt()
                        : ""));
        figures.add(new KeyFigure(
                "Days with a trip",
                String.valueOf(result.daysWithTrips()),
                "of " + PlainText.count(result.days().size(), "day")));
        life().ifPresent(figures::add);
        return figures;
    }

    private Optional<KeyFigure> life() {
        return story.result().failedStartDay().isPresent()
                ? Optional.empty()
                : story.result().batteries().stream()
                        .filter(battery -> battery.life()
                                .filter(life -> Double.isFinite(life.highDays()))
                                .isPresent())
                        .min(Comparator.comparingDouble(
                                battery -> battery.life().orElseThrow().middleDays()))
                        .map(battery -> new KeyFigure(
                                "Life by cycling",
                                RosterText.years(battery.life().orElseThrow().lowDays()) + " to "
                                        + RosterText.years(
                                                battery.life().orElseThrow().highDays()) + " years",
                                "order of magnitude"));
    }

    private Day lowestDay(int place) {
        return story.result().countedDays().stream()
                .min(Comparator.comparingDouble(
                        day -> day.batteries().get(place).lowestChargeFraction()))
                .orElseThrow();
    }

    /** Which numbers not to trust. */
    public List<String> doubts() {
        List<String> doubts = new ArrayList<>(List.of(
                "Times of trips: flashing and duty run as their mean, so that a trip may come an hour earlier or later. Run"
                        + " the single scene for its time.",
                "Life: published cycle counts are orders of magnitude, and cycling is only one of the ways in which a"
                        + " battery dies.",
                "Everything after the first weeks: a battery that ages holds less and sags more than the one that was"
                        + " run."));
        for (BatteryDays battery : story.result().batteries()) {
            if (battery.trend().filter(RosterReasons::isLevel).isPresent()
                    && battery.endChargeFraction() < LOW_FRACTION
                    && battery.life().isPresent()) {
                doubts.add("That " + PlainText.quoted(battery.battery()) + " stays level: at "
                        + PlainText.percent(battery.endChargeFraction())
                        + " it is never full for long, and lead plates that"
                        + " stay so sulphate, which is not in the model.");
            }
        }
        return doubts;
    }

    private static boolean isLevel(Trend trend) {
        return Math.abs(trend.weeklyFraction()) <= Trend.LEVEL_WEEKLY_FRACTION;
    }
}

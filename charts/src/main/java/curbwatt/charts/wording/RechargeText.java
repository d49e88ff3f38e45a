package curbwatt.charts.wording;

import curbwatt.charts.run.RechargeStory;
import curbwatt.engine.study.recharge.Limit;
import curbwatt.engine.study.recharge.RechargeResult;
import curbwatt.engine.study.recharge.WayBack;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What gives the charge back, in words.
 *
 * @param story the study
 */
public record RechargeText(RechargeStory story) {

    /** Slowest idle that is looked at (1/min). */
    private static final double SLOWEST_RPM = 500;

    private static final double S_PER_H = 3600;
    private static final double PACE_FACTOR = 1.2;

    /** A rule of thumb says that half an hour of driving recharges a battery; common practice, no published source. */
    private static final double THUMB_S = 1800;

    /** The answer. */
    public String headline() {
        String shifts = result().shifts()
                .map(answer -> " " + new ShiftText(answer).sentence())
                .orElse("");
        return scene() + shifts;
    }

    private String scene() {
        if (isNothing()) {
            return "Nothing is to be given back: at the scene's end " + stands() + ".";
        }
        WayBack driving = result().driving();
        String lacks = PlainText.ampereHours(result().missingAh());
        String drive = driving.backS().isPresent()
                ? PlainText.time(driving.backS().getAsDouble()) + " of " + RechargeWords.plain(driving.way()) + " give"
                        + " back the " + lacks + " that are missing after the scene"
                : "Not even a day of " + RechargeWords.plain(driving.way()) + " gives back all of the " + lacks
                        + " that are missing after the scene: " + RechargeWords.limit(driving);
        return drive + "; " + idle() + ".";
    }

    private String idle() {
        WayBack own = result().idling().get(0);
        String name = RechargeWords.plain(own.way());
        if (own.backS().isPresent()) {
            return name + " takes " + PlainText.time(own.backS().getAsDouble());
        }
        OptionalDouble lowestRpm = result().lowestEverRpm();
        return name + " never does"
                + (lowestRpm.isPresent()
                        ? ", " + RechargeWords.speed(lowestRpm.getAsDouble()) + " or more within a day"
                        : "");
    }

    private String stands() {
        return result().missing().stream()
                .map(battery -> PlainText.quoted(battery.battery()) + " has "
                        + PlainText.percent(battery.endFraction()) + " of its charge, and "
                        + PlainText.percent(battery.wantedFraction()) + " are wanted")
                .collect(Collectors.joining("; "));
    }

    /** Whether nothing is missing. */
    public boolean isNothing() {
        return result().driving().isNothing();
    }

    /** Key figures. */
    public List<KeyFigure> figures() {
        List<KeyFigure> figures = new ArrayList<>();
        figures.add(new KeyFigure("Missing after the scene", PlainText.ampereHours(result().missingAh()), ends()));
        if (!isNothing()) {
            WayBack own = result().idling().get(0);
            figures.add(figure(result().driving()));
            figures.add(figure(own));
            figures.add(new KeyFigure("Lowest idle, within a day", speed(result().lowestEverRpm()), ""));
            figures.add(new KeyFigure("Lowest idle, within " + between(), speed(result().lowestInTimeRpm()), ""));
        }
        result().shifts().ifPresent(answer -> figures.add(new ShiftText(answer).figure()));
        return figures;
    }

    private static KeyFigure figure(WayBack back) {
        return new KeyFigure(
                RechargeWords.name(back.way()), RechargeWords.time(back.backS()), RechargeWords.limit(back));
    }

    private String ends() {
        return result().missing().stream()
                .map(battery -> PlainText.percent(battery.endFraction()) + " left, "
                        + PlainText.percent(battery.wantedFraction()) + " wanted")
                .collect(Collectors.joining("; "));
    }

    private static String speed(OptionalDouble rpm) {
        if (rpm.isEmpty()) {
            return "none up to 2000 /min";
        }
        return RechargeWords.speed(rpm.getAsDouble()) + (rpm.getAsDouble() <= SLOWEST_RPM ? " or less" : "");
    }

    private String between() {
        return PlainText.time(result().plan().betweenCallsS());
    }

    /** Why, in sentences. */
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        if (!isNothing()) {
            reasons.add(pace(result().driving()));
            reasons.add(pace(result().idling().get(0)));
            reasons.add("Within " + between() + " " + inTime());
            reasons.add("Half an hour of driving, the rule of thumb (common practice, no published source), gives back "
                    + PlainText.percent(shareAt(result().driving(), THUMB_S)) + " of it.");
        }
        result().shifts().ifPresent(answer -> reasons.addAll(new ShiftText(answer).reasons()));
        return reasons;
    }

    private String inTime() {
        OptionalDouble rpm = result().lowestInTimeRpm();
        if (rpm.isPresent()) {
            return rpm.getAsDouble() <= SLOWEST_RPM
                    ? "any idle from " + RechargeWords.speed(rpm.getAsDouble()) + " on is enough."
                    : "it takes an idle of " + RechargeWords.speed(rpm.getAsDouble()) + " or more.";
        }
        WayBack fastest = result().idling().get(result().idling().size() - 1);
        return "no idle up to 2000 /min is enough"
                + switch (fastest.limit().orElse(Limit.ACCEPTANCE)) {
                    case ACCEPTANCE ->
                        ": it is the battery that takes no more, and a faster engine does not change that.";
                    case PACK_REFUSES ->
                        ": the pack's protection refuses charge, and a faster engine does not change that.";
                    case ALTERNATOR, DOES_NOT_START -> ".";
                };
    }

    /** Whether the alternator or the battery sets the pace. */
    private String pace(WayBack back) {
        String way = RechargeWords.name(back.way());
        if (!back.started()) {
            return way
                    + ": the engine does not start after the scene, so that nothing charges until somebody helps it.";
        }
        double spareA = back.capacityA().orElse(0) - back.meanLoadA();
        String balance = way + ": the hot alternator can give "
                + PlainText.amperes(back.capacityA().orElse(0)) + ", the loads left on take "
                + PlainText.amperes(back.meanLoadA());
        if (spareA <= 0) {
            return balance + ". There is nothing to charge with.";
        }
        String spare = balance + "; " + PlainText.amperes(spareA) + " are to spare";
        if (back.backS().isEmpty()) {
            return spare + ". " + never(back);
        }
        return spare + ", and a battery that took them all would be back in "
                + PlainText.time(result().missingAh() / spareA * S_PER_H) + "."
                + (setsPace(back, spareA) ? " The alternator sets the pace: " : " Its acceptance slows near full: ")
                + "80 % are back in " + RechargeWords.time(back.timeS(0.8)) + ", 90 % in "
                + RechargeWords.time(back.timeS(0.9)) + ", all in "
                + PlainText.time(back.backS().getAsDouble()) + ".";
    }

    private static String never(WayBack back) {
        String early =
                back.timeS(0.8).isPresent() ? "80 % are back in " + RechargeWords.time(back.timeS(0.8)) + "; " : "";
        double most = 100 * Math.max(0, back.mostFraction());
        String much = most < 0.05
                ? (early.isEmpty() ? "Nothing" : "nothing") + " comes back in a day"
                : (early.isEmpty() ? "No" : "no") + " more than " + PlainText.number(most, 1) + " % come back in a day";
        return early + much + ", because " + RechargeWords.limit(back) + ".";
    }

    /** Whether charge comes back about as fast as the alternator can spare it. */
    private static boolean setsPace(WayBack back, double spareA) {
        return back.backS().orElse(Double.POSITIVE_INFINITY) <= PACE_FACTOR * back.missingAh() / spareA * S_PER_H;
    }

    /** Share that is back after a time, the last moment kept before it. */
    private static double shareAt(WayBack back, double timeS) {
        return back.points().stream()
                .filter(point -> point.timeS() <= timeS)
                .reduce((before, after) -> after)
                .map(back::shareFraction)
                .map(share -> Math.max(0, share))
                .orElse(0.0);
    }

    /** The words above the picture of charge over time. */
    public Heading heading() {
        String what = result().missing().size() > 1 ? "Charge of both batteries together" : "Charge of the battery";
        return new Heading(
                scene(),
                what + " over the time of recharging, at " + PlainText.number(result().airC(), 0)
                        + " °C and with the loads that are left on.");
    }

    /** The words above the picture of times over idle speeds. */
    public Heading speeds() {
        WayBack own = result().idling().get(0);
        WayBack fastest = result().idling().get(result().idling().size() - 1);
        return new Heading(
                own.isAsFastAs(fastest)
                        ? "A faster idle gains nothing: it is the battery that sets the pace."
                        : own.backS().isEmpty()
                                ? RechargeWords.name(own.way()) + " never gives all back; "
                                        + RechargeWords.plain(fastest.way()) + " takes "
                                        + RechargeWords.time(fastest.backS()) + "."
                                : RechargeWords.name(own.way()) + " takes " + RechargeWords.time(own.backS()) + ", "
                                        + RechargeWords.plain(fastest.way()) + " "
                                        + RechargeWords.time(fastest.backS()) + ".",
                "Time of idling until a share of the missing charge is back; a run at each speed tried, straight lines"
                        + " between. Speeds that never give it back are left out.");
    }

    /** Names of the shares in that picture, all first. */
    public List<String> shares() {
        return List.of("all back", "90 % back", "80 % back");
    }

    private RechargeResult result() {
        return story.result();
    }
}

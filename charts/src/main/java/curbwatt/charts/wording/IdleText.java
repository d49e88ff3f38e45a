package curbwatt.charts.wording;

import curbwatt.charts.run.IdleStory;
import curbwatt.engine.study.idle.Flip;
import curbwatt.engine.study.idle.IdleCase;
import curbwatt.engine.study.idle.IdleWay;
import curbwatt.engine.study.idle.Lever;
import curbwatt.engine.study.idle.Measure;
import curbwatt.engine.study.idle.Standing;
import curbwatt.engine.study.idle.Tried;
import curbwatt.engine.study.idle.WayOutcome;
import curbwatt.engine.study.idle.money.Prices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The answer on standing, in words.
 *
 * @param story the study and its runs
 */
public record IdleText(IdleStory story) {

    /** What to do, and what it takes. */
    public String headline() {
        Optional<WayOutcome> best = base().best();
        if (best.isEmpty()) {
            WayOutcome longest = longest();
            return "None of the four ways holds what is asked. "
                    + capital(IdleWords.plain(longest.way())) + " comes nearest: "
                    + WayText.found(longest) + ".";
        }
        WayOutcome way = best.get();
        String start = IdleWords.advice(way.way()) + ": ";
        Optional<WayOutcome> next = runnerUp(way);
        if (next.isEmpty()) {
            return start + "no other way holds what is asked. It takes " + cost(base().cost(way)) + ".";
        }
        return start + "of the ways that hold what is asked it takes least, " + cost(base().cost(way)) + " against "
                + cost(base().cost(next.get())) + " for "
                + IdleWords.plain(next.get().way()) + ".";
    }

    /** Why not each of the others, and when the answer changes. */
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        for (WayOutcome outcome : base().outcomes()) {
            if (!Optional.of(outcome.way()).equals(base().bestWay())) {
                reasons.add("Why not " + IdleWords.plain(outcome.way()) + "? " + whyNot(outcome));
            }
        }
        reasons.addAll(flips());
        return reasons;
    }

    private String whyNot(WayOutcome outcome) {
        if (!outcome.serves()) {
            return capital(WayText.found(outcome)) + ".";
        }
        WayOutcome best = base().best().orElseThrow();
        double more = base().cost(outcome) - base().cost(best);
        if (more <= 1e-9 * Math.abs(base().cost(best))) {
            return "It takes as much, and needs a device that has nothing to do here.";
        }
        return "It holds too, but takes " + cost(more) + " more.";
    }

    /** When the answer changes, one sentence each. */
    public List<String> flips() {
        List<String> sentences = new ArrayList<>();
        for (Flip flip : story.result().flips()) {
            String now = story.result().base().bestWay().isEmpty() ? "A way is found" : "The answer changes";
            sentences.add(now + " " + (flip.factor() < 1 ? "below " : "above ") + value(flip.lever(), flip.factor())
                    + ": then it is " + IdleWords.plain(flip.to()) + ".");
        }
        for (Lever lever : List.of(Lever.SCENE_HOURS, Lever.ALTERNATOR_IDLE)) {
            List<Tried> tried = story.result().tried(lever);
            if (!tried.isEmpty() && story.result().flips().stream().noneMatch(flip -> flip.lever() == lever)) {
                sentences.add(IdleWords.name(lever) + " does not change it: tried from "
                        + amount(lever, tried.get(0).factor()) + " to "
                        + amount(lever, tried.get(tried.size() - 1).factor()) + ".");
            }
        }
        return sentences;
    }

    /** A lever's value in words, after "below" or "above". */
    String value(Lever lever, double factor) {
        return switch (lever) {
            case SCENE_HOURS -> amount(lever, factor) + " of standing";
            case ALTERNATOR_IDLE ->
                "an alternator whose label has " + amount(lever, factor) + " of its low-speed output";
            case FUEL_PRICE -> "a fuel price of " + amount(lever, factor);
            case SCENES_PER_YEAR -> amount(lever, factor);
            case IDLE_CONTROL_PRICE -> "a price of " + amount(lever, factor) + " for the idle control";
            case AUTOMATIC_START_PRICE -> "a price of " + amount(lever, factor) + " for the automatic start";
        };
    }

    /** A lever's value with its unit. */
    public String amount(Lever lever, double factor) {
        return switch (lever) {
            case SCENE_HOURS -> PlainText.time(factor * standingS());
            case ALTERNATOR_IDLE -> PlainText.percent(factor);
            case FUEL_PRICE -> money(factor * prices().fuelMoneyPerLitre(), 2) + " per litre";
            case SCENES_PER_YEAR -> PlainText.number(factor * base().plan().scenesPerYear(), 0) + " scenes a year";
            case IDLE_CONTROL_PRICE -> money(factor * prices().idleControlMoney(), 0);
            case AUTOMATIC_START_PRICE -> money(factor * prices().automaticStartMoney(), 0);
        };
    }

    /** Time for which the vehicle stands in the scene (s). */
    public double standingS() {
        return story.scenario().scene().phases().stream()
                .filter(Standing::isStanding)
                .mapToDouble(phase -> phase.durationS())
                .sum();
    }

    /** A cost in the unit of the measure. */
    public String cost(double amount) {
        return switch (base().measure()) {
            case MONEY -> money(amount, 0) + " a year";
            case FUEL -> PlainText.number(amount, 2) + " L of fuel a scene";
            case ENGINE_HOURS -> PlainText.number(amount, 2) + " engine hours a scene";
        };
    }

    /** Money with the name of its currency. */
    public String money(double amount, int decimals) {
        return (PlainText.number(amount, decimals) + " " + prices().currency()).strip();
    }

    /** The few figures beside the answer: those of the best way, or of the nearest. */
    public List<KeyFigure> keyFigures() {
        WayOutcome way = base().best().orElseGet(this::longest);
        List<KeyFigure> figures = new ArrayList<>();
        double scenes = base().plan().scenesPerYear();
        figures.add(new KeyFigure(
                "Engine hours",
                PlainText.number(way.usage().engineH() * scenes, 0) + " h a year",
                PlainText.number(way.usage().engineH(), 2) + " h a scene"));
        way.usage()
                .fuelLitres()
                .ifPresent(litres -> figures.add(new KeyFigure(
                        "Fuel", PlainText.number(litres * scenes, 0) + " L a year", saved(way, litres * scenes))));
        way.carbonKg()
                .ifPresent(kg -> figures.add(
                        new KeyFigure("CO2", PlainText.number(kg * scenes, 0) + " kg a year", "of that fuel")));
        figures.add(new KeyFigure(
                "Restart margin",
                Double.isFinite(way.answer().restartMarginV())
                        ? PlainText.volts(way.answer().restartMarginV())
                        : "none",
                "charge at the end " + PlainText.percent(way.answer().result().endChargeFraction())));
        return figures;
    }

    private String saved(WayOutcome way, double litresPerYear) {
        if (way.way() == IdleWay.IDLING) {
            return "";
        }
        double idlingLitres = base().of(IdleWay.IDLING).usage().fuelLitres().orElseThrow()
                * base().plan().scenesPerYear();
        double less = idlingLitres - litresPerYear;
        return PlainText.number(Math.abs(less), 0) + " L " + (less < 0 ? "more" : "less") + " than plain idling";
    }

    /** The words above the trajectories. */
    public Heading trajectories() {
        String title = base().best()
                .map(best -> capital(IdleWords.plain(best.way())) + " ends at "
                        + PlainText.percent(best.answer().result().endChargeFraction())
                        + " charge and holds what is asked")
                .orElse("None of the ways holds what is asked");
        return new Heading(
                title,
                story.scenario().vehicle().name()
                        + ", the same scene in four ways. Mean voltage of the starter node, and"
                        + " the starter battery's charge.");
    }

    /** The words above the picture over the time of standing. */
    public Heading hours() {
        String what = base().measure() == Measure.ENGINE_HOURS ? "Engine hours" : "Fuel";
        String title = story.result().flips().stream()
                .filter(flip -> flip.lever() == Lever.SCENE_HOURS)
                .min(Comparator.comparingDouble(flip -> Math.abs(Math.log(flip.factor()))))
                .map(flip -> (flip.factor() < 1 ? "Below " : "Above ") + amount(flip.lever(), flip.factor())
                        + " of standing the best way is " + IdleWords.plain(flip.to()))
                .orElse("However long it stands, the best way stays the same");
        return new Heading(
                title, what + " of one scene over the time of standing. A dot holds what is asked, a cross does not.");
    }

    /** The words above the break-even curves. */
    public Heading breakEven() {
        return new Heading(
                base().best()
                        .filter(best -> IdleCase.needsDevice(best.way()))
                        .map(best ->
                                capital(IdleWords.plain(best.way())) + " pays at today's price and number of scenes")
                        .orElse("At today's price and number of scenes no device pays"),
                "Scenes a year from which on a device pays, over the price of fuel; against "
                        + IdleWords.plain(base().withoutDevice().way()) + ".");
    }

    private Optional<WayOutcome> runnerUp(WayOutcome best) {
        return base().outcomes().stream()
                .filter(outcome -> outcome.serves() && outcome.way() != best.way())
                .min(Comparator.comparingDouble(base()::cost));
    }

    private WayOutcome longest() {
        return base().outcomes().stream()
                .max(Comparator.comparingDouble(outcome ->
                        outcome.answer().heldS().orElse(outcome.answer().restartMarginV())))
                .orElseThrow();
    }

    private IdleCase base() {
        return story.result().base();
    }

    private Prices prices() {
        return base().plan().prices().orElseThrow();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}

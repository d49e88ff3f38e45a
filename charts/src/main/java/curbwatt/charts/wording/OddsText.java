package curbwatt.charts.wording;

import curbwatt.engine.study.odds.Chance;
import curbwatt.engine.study.odds.Importance;
import curbwatt.engine.study.odds.OddsResult;
import curbwatt.engine.study.odds.RankCorrelation;
import curbwatt.engine.study.odds.VarianceShare;
import curbwatt.engine.verdict.Requirement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What came of many draws, in words.
 *
 * @param result the draws
 * @param requirements what was asked
 */
public record OddsText(OddsResult result, List<Requirement> requirements) {

    /** Copies the list. */
    public OddsText {
        requirements = List.copyOf(requirements);
    }

    /** The answer in a sentence. */
    public String headline() {
        String all = " of " + result.draws().size() + " draws";
        String starts = result.held()
                .map(held ->
                        "Held in " + share(held) + all + " (" + bounds(held) + "); starts in " + share(result.starts()))
                .orElseGet(() -> "Starts in " + share(result.starts()) + all + " (" + bounds(result.starts()) + ")");
        return starts + "; " + mattersMost() + ".";
    }

    private String mattersMost() {
        return strongest()
                .map(importance -> new OddsInputText(importance.input()).name() + " matters most")
                .orElse("no input stands out");
    }

    /** The input that matters most, if one can be told from no effect at all. */
    public Optional<Importance> strongest() {
        return result.importance().stream().findFirst().filter(OddsText::isTold);
    }

    private static boolean isTold(Importance importance) {
        RankCorrelation rank = importance.rank();
        return rank.lowRatio() > 0
                || rank.highRatio() < 0
                || importance.share().filter(share -> share.lowFraction() > 0).isPresent();
    }

    /** The few figures beside it. */
    public List<KeyFigure> keyFigures() {
        List<KeyFigure> figures = new ArrayList<>();
        result.held().ifPresent(held -> figures.add(figure("Scene held", held)));
        figures.add(figure("Starts", result.starts()));
        askedMarginV()
                .ifPresent(marginV -> figures.add(
                        figure("Starts with " + PlainText.volts(marginV) + " to spare", result.enoughMargin())));
        figures.add(figure("Nuisance trip", result.nuisance()));
        return figures;
    }

    private static KeyFigure figure(String name, Chance chance) {
        return new KeyFigure(name, share(chance), bounds(chance) + " with 95 % confidence");
    }

    private OptionalDouble askedMarginV() {
        return requirements.stream()
                .filter(Requirement.WillStart.class::isInstance)
                .mapToDouble(asked -> ((Requirement.WillStart) asked).marginV())
                .filter(marginV -> marginV > 0)
                .max();
    }

    /** Why, in sentences. */
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        reasons.add(importanceSentence());
        reasons.add(tripSentence());
        reasons.add(marginSentence());
        return reasons;
    }

    /** What the deciding outcome depends on. */
    public String importanceSentence() {
        String outcome = outcome();
        if (strongest().isEmpty()) {
            return "Within what these draws can tell, " + outcome
                    + " depends on none of the inputs more than on others.";
        }
        List<Importance> told =
                result.importance().stream().filter(OddsText::isTold).limit(3).toList();
        return "What " + outcome + " depends on: "
                + told.stream().map(this::inWords).collect(Collectors.joining(", then ")) + ".";
    }

    /** What the ranking is about. */
    public String outcome() {
        return result.holdDecides() ? "the time held" : "the restart margin";
    }

    private String inWords(Importance importance) {
        String name = new OddsInputText(importance.input()).name();
        return importance
                .share()
                .map(share -> name + " (" + percent(share) + " of the variance)")
                .orElseGet(() -> name + " (rank correlation " + ratio(importance.rank()) + ")");
    }

    private static String percent(VarianceShare share) {
        return PlainText.percent(Math.max(0, share.firstFraction()));
    }

    private static String ratio(RankCorrelation rank) {
        return PlainText.number(rank.rhoRatio(), 2);
    }

    /** How often a cutoff opens, when, and how often for nothing. */
    public String tripSentence() {
        Chance trips = result.trips();
        if (trips.hits() == 0) {
            return "No cutoff opens on low voltage in any draw (chance at most "
                    + ChanceText.share(trips.highFraction()) + ").";
        }
        String often = "A cutoff opens on low voltage in " + new ChanceText(trips).whole() + " of the draws";
        String nuisance = result.nuisance().hits() == 0
                ? "; in none of them would the engine have started with enough margin without it."
                : "; in " + new ChanceText(result.nuisance()).whole()
                        + " of the draws that is a nuisance: without it the engine would have started all the same.";
        return often + nuisance;
    }

    private String marginSentence() {
        List<Double> margins = result.draws().stream()
                .map(draw -> draw.outcome().restartMarginV())
                .sorted()
                .toList();
        return "The restart margin is " + PlainText.volts(margins.get(margins.size() / 2)) + " in the middle draw, and "
                + PlainText.volts(margins.get(margins.size() / 20)) + " or less in one of twenty.";
    }

    /** The title over the trip times: "Half of the trips come before 1 h 12 min". */
    public Heading tripHeading() {
        List<Double> timesS = result.tripTimesS();
        double share = (double) timesS.size() / result.draws().size();
        String never = share < 1 ? ChanceText.share(1 - share) + " of the draws never trip." : "Every draw trips.";
        return new Heading(
                timesS.size() == 1
                        ? "One draw trips, after " + PlainText.time(timesS.get(0))
                        : "Half of the first trips come within " + PlainText.time(timesS.get(timesS.size() / 2)),
                never + " First opening of any cutoff, by voltage or by its timer; share of all "
                        + result.draws().size() + " draws.");
    }

    /** The title over the fan. */
    public Heading fanHeading(boolean pair) {
        return new Heading(
                result.held()
                        .map(held -> "Held in " + share(held) + " of the draws, starts in " + share(result.starts()))
                        .orElseGet(() -> "Starts in " + share(result.starts()) + " of the draws"),
                (pair ? "Equipment node and its battery" : "Battery node") + " over the scenes of "
                        + result.draws().size()
                        + " draws. Dark: the middle half of them; pale: nine tenths. Voltage: the lowest of each stretch.");
    }

    /** The title over the ranking. */
    public Heading importanceHeading() {
        String what = result.holdDecides() ? "how long the scene is held" : "the restart margin";
        String title = strongest()
                .map(importance -> capital(new OddsInputText(importance.input()).name()) + " matters most for " + what)
                .orElse("No input stands out for " + what);
        return new Heading(
                title,
                result.plan().indices()
                        ? "First-order Sobol index: the share of the variance that goes back to the input alone. Lines: 95 %"
                                + " confidence."
                        : "Rank correlation: +1 if it always rises with the input, −1 if it always falls. Lines: 95 % confidence.");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    private static String share(Chance chance) {
        return new ChanceText(chance).share();
    }

    private static String bounds(Chance chance) {
        return new ChanceText(chance).bounds();
    }
}

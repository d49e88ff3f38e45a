package curbwatt.charts.wording;

import curbwatt.charts.run.SizeStory;
import curbwatt.engine.study.size.CandidateOutcome;
import curbwatt.engine.study.size.Conditions;
import curbwatt.engine.study.size.Need;
import curbwatt.engine.study.size.PaperSize;
import curbwatt.engine.study.size.SizePlan;
import curbwatt.engine.study.size.SizeResult;
import curbwatt.engine.verdict.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What came of a sizing, in words.
 *
 * @param story the sizing
 */
public record SizeText(SizeStory story) {

    /** The answer in a sentence or two. */
    public String headline() {
        SizeResult result = story.result();
        Need need = result.steps().atOdds();
        if (need.holdsAh().isEmpty()) {
            return "No size of " + battery() + " holds the scene " + where() + ": with " + ah(need.failsAh()) + " "
                    + failure(need) + ".";
        }
        String list = result.outcomes().isEmpty()
                ? ""
                : result.chosen()
                        .map(chosen -> " The smallest of the list that does is "
                                + PlainText.quoted(chosen.candidate().name()) + ".")
                        .orElse(" None of the list does.");
        return "To hold the scene " + where() + ", " + battery() + " needs " + ah(need.holdsAh())
                + " (20 h); the one there has " + PlainText.number(result.nowAh(), 0) + " Ah." + list;
    }

    private String battery() {
        return story.result().seat().isAuxiliary() ? "the auxiliary battery" : "the battery";
    }

    private String where() {
        Conditions stated = story.result().stated();
        SizePlan plan = story.result().plan();
        return "with " + PlainText.percent(stated.capacityHealthFraction()) + " of its capacity left, at "
                + PlainText.number(stated.batteryC(), 0) + " °C, in " + plan.mustHold() + " of " + plan.draws()
                + " draws";
    }

    private static String failure(Need need) {
        return need.failure().map(finding -> new FailureText(finding).words()).orElse("something is not met");
    }

    private static String ah(OptionalDouble sizeAh) {
        return sizeAh.isPresent() && Double.isFinite(sizeAh.getAsDouble())
                ? PlainText.number(sizeAh.getAsDouble(), 1) + " Ah"
                : "none";
    }

    /** What a battery of the list fails, in a few words. */
    public static String failed(Finding finding) {
        return new FailureText(finding).words();
    }

    /** Key figures. */
    public List<KeyFigure> figures() {
        SizeResult result = story.result();
        List<KeyFigure> figures = new ArrayList<>();
        figures.add(new KeyFigure("Needed", ah(result.steps().atOdds().holdsAh()), where()));
        figures.add(new KeyFigure(
                "In the stated conditions alone", ah(result.steps().stated().holdsAh()), ""));
        figures.add(new KeyFigure(
                "To buy",
                result.chosen().map(chosen -> chosen.candidate().name()).orElse("none of the list"),
                ""));
        result.paper()
                .ifPresent(paper -> figures.add(new KeyFigure(
                        "By the paper method",
                        PlainText.number(paper.capacityAh(), 0) + " Ah",
                        "method of IEEE 485, to " + PlainText.volts(paper.endV()))));
        return figures;
    }

    /** Why, in sentences. */
    public List<String> reasons() {
        SizeResult result = story.result();
        List<String> reasons = new ArrayList<>();
        Need need = result.steps().atOdds();
        if (need.holdsAh().isEmpty()) {
            reasons.add("More capacity does not help: what fails does not depend on it. Look at trip levels, the"
                    + " alternator and the starter battery instead.");
        } else {
            need.failsAh()
                    .ifPresent(failsAh -> reasons.add("With " + ah(OptionalDouble.of(failsAh)) + " " + failure(need)
                            + ", in the draw that decides."));
            reasons.add("New and at 25 °C " + ah(result.steps().asNewWarm().holdsAh()) + " would do; at "
                    + PlainText.number(result.stated().batteryC(), 0) + " °C "
                    + ah(result.steps().asNew().holdsAh()) + "; aged as stated "
                    + ah(result.steps().stated().holdsAh()) + "; with the spread " + ah(need.holdsAh()) + ".");
        }
        neighbour(result).ifPresent(reasons::add);
        result.paper().ifPresent(paper -> reasons.addAll(compared(result, paper)));
        return reasons;
    }

    private static Optional<String> neighbour(SizeResult result) {
        List<CandidateOutcome> below = result.outcomes().stream()
                .takeWhile(outcome -> result.chosen().filter(outcome::equals).isEmpty())
                .toList();
        if (below.isEmpty()) {
            return Optional.empty();
        }
        CandidateOutcome next = below.get(below.size() - 1);
        String why = next.failure()
                .map(finding -> new FailureText(finding).words())
                .orElse("it holds in " + next.held().orElse(0) + " of "
                        + result.plan().draws() + " draws, and " + result.plan().mustHold() + " are asked");
        return Optional.of("Not " + PlainText.quoted(next.candidate().name()) + ", the next smaller: " + why + ".");
    }

    private static List<String> compared(SizeResult result, PaperSize paper) {
        List<String> said = new ArrayList<>();
        OptionalDouble needAh = result.steps().atOdds().holdsAh();
        if (needAh.isPresent()) {
            double ratio = paper.capacityAh() / needAh.getAsDouble();
            said.add("The paper method gives " + PlainText.number(paper.capacityAh(), 0) + " Ah, "
                    + PlainText.number(Math.abs(100 * (ratio - 1)), 0) + (ratio < 1 ? " % less." : " % more.")
                    + " It multiplies " + PlainText.ampereHours(paper.chargeAh()) + " by "
                    + PlainText.number(paper.uncorrectedAh() / paper.chargeAh(), 2) + " for the rate, "
                    + PlainText.number(paper.factors().temperatureFactor(), 2) + " for cold, "
                    + PlainText.number(paper.factors().marginFactor(), 2) + " as a margin and "
                    + PlainText.number(paper.factors().ageingFactor(), 2) + " for age.");
        }
        if (paper.tripV() > paper.endV()) {
            said.add("It empties the battery to " + PlainText.volts(paper.endV()) + "; here the scene is lost at "
                    + PlainText.volts(paper.tripV()) + ". With that as its end voltage it would give "
                    + paper.capacityAtTripAh().stream()
                            .mapToObj(sizeAh -> PlainText.number(sizeAh, 0) + " Ah")
                            .findFirst()
                            .orElse("no size at all")
                    + ". It knows no charge below full at the start, no recovery between flashes, no delay of a"
                    + " cutoff and no restart.");
        }
        return said;
    }

    /** The words above the picture. */
    public Heading heading() {
        SizeResult result = story.result();
        Need need = result.steps().atOdds();
        String title = need.holdsAh().isEmpty()
                ? "No size holds the scene"
                : ah(need.holdsAh()) + " hold the scene for " + PlainText.time(result.requiredS()) + " at "
                        + PlainText.number(result.stated().batteryC(), 0) + " °C with "
                        + PlainText.percent(result.stated().capacityHealthFraction()) + " of the capacity left";
        return new Heading(
                title,
                "Time to the first loss against size; the stretch with the engine off goes on three times as long. Whole"
                        + " lines: aged as stated; dotted: new. The need also counts restart, charge and spread.");
    }
}

package curbwatt.charts.report;

import curbwatt.charts.figure.Caption;
import curbwatt.charts.figure.HoldFigure;
import curbwatt.charts.output.SizeJson;
import curbwatt.charts.run.SizeStory;
import curbwatt.charts.wording.Heading;
import curbwatt.charts.wording.PlainText;
import curbwatt.charts.wording.SizeText;
import curbwatt.engine.study.size.CandidateOutcome;
import curbwatt.engine.study.size.PaperSize;
import curbwatt.engine.study.size.SizeResult;
import curbwatt.engine.study.size.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The report of a sizing. */
public final class SizeReport {

    private SizeReport() {}

    /** Everything that there is to show. */
    public static StudyReport of(SizeStory story) {
        SizeText text = new SizeText(story);
        Heading heading = text.heading();
        SizeResult result = story.result();
        List<Table> tables = new ArrayList<>();
        tables.add(steps(result));
        if (!result.outcomes().isEmpty()) {
            tables.add(list(result));
        }
        return new StudyReport(
                story.scenario(),
                text.headline(),
                text.figures(),
                List.of(HoldFigure.of(story, new Caption(heading.title(), heading.subtitle()))),
                text.reasons(),
                tables,
                doubts(result),
                StudyReport.inLongSteps(assumptions(result)),
                SizeJson.of(story),
                List.of(new StudyReport.CsvTable(
                        "hold.csv", "hold time against size", SizeJson.curves(result.curves()))));
    }

    private static Table steps(SizeResult result) {
        List<List<String>> lines = new ArrayList<>();
        PaperSize paper = result.paper().orElse(null);
        double uncorrectedAh = paper == null ? Double.NaN : paper.uncorrectedAh();
        double coldAh =
                paper == null ? Double.NaN : uncorrectedAh * paper.factors().temperatureFactor();
        double agedAh = paper == null ? Double.NaN : coldAh * paper.factors().ageingFactor();
        lines.add(List.of("Charge drawn, mean currents", ah(paper == null ? Double.NaN : paper.chargeAh()), ""));
        lines.add(List.of(
                "New, at 25 °C",
                ah(uncorrectedAh),
                ah(result.steps().asNewWarm().holdsAh())));
        lines.add(List.of(
                "At the stated temperature",
                ah(coldAh),
                ah(result.steps().asNew().holdsAh())));
        lines.add(
                List.of("Aged as stated", ah(agedAh), ah(result.steps().stated().holdsAh())));
        lines.add(List.of(
                "With the margin; at the odds",
                ah(paper == null ? Double.NaN : paper.capacityAh()),
                ah(result.steps().atOdds().holdsAh())));
        if (paper != null && paper.tripV() > paper.endV()) {
            lines.add(List.of("The same to " + PlainText.volts(paper.tripV()), ah(paper.capacityAtTripAh()), ""));
        }
        return Table.of(
                "steps",
                "Two methods, step by step",
                "The paper method is that of IEEE 485: section by section, with the battery's own discharge table. Each row adds"
                        + " one thing to the row above.",
                List.of("", "#Paper method, Ah", "#This study, Ah"),
                lines);
    }

    private static Table list(SizeResult result) {
        List<List<String>> lines = new ArrayList<>();
        for (CandidateOutcome outcome : result.outcomes()) {
            String held = outcome.held().isPresent()
                    ? outcome.held().getAsInt() + " of " + result.plan().draws()
                    : "";
            lines.add(List.of(
                    outcome.candidate().name(),
                    PlainText.number(outcome.candidate().c20Ah(), 0),
                    outcome.failure().map(SizeText::failed).orElse("everything is met"),
                    held));
        }
        return Table.of(
                "list",
                "What the fleet can buy",
                "From the smallest. Draws are asked of those that meet everything in the stated conditions, until one holds in "
                        + result.plan().mustHold() + ".",
                List.of("Battery", "#20 h capacity, Ah", "In the stated conditions", "#Draws held"),
                lines);
    }

    private static List<String> assumptions(SizeResult result) {
        Spread spread = result.plan().spread();
        return List.of(
                "A battery of another size is as many of the present one side by side: charge, resistance and cranking current"
                        + " grow together. One of the list is fitted to its own label.",
                "The sized battery has " + PlainText.percent(result.stated().capacityHealthFraction())
                        + " of its capacity and "
                        + PlainText.number(result.stated().resistanceGrowthFactor(), 2)
                        + " times its resistance when new; the other battery, if there is one, is as the scenario says.",
                "The draws scatter temperature, capacity and load by normal laws with standard deviations of "
                        + PlainText.number(spread.temperatureK(), 1) + " K, "
                        + PlainText.number(100 * spread.capacityFraction(), 1) + " % and "
                        + PlainText.number(100 * spread.loadFraction(), 1)
                        + " %, evenly and always the same; our judgement where the scenario does not say.",
                "Within one draw a larger battery is taken never to be worse; the stated conditions are searched from "
                        + "5 to 1280 Ah without that.");
    }

    private static List<String> doubts(SizeResult result) {
        return List.of(
                "The odds: they are counted in " + result.plan().draws()
                        + " draws whose spread is a judgement, not a measurement.",
                "The age: how far capacity and resistance go down together differs from battery to battery.");
    }

    private static String ah(OptionalDouble sizeAh) {
        return ah(sizeAh.orElse(Double.NaN));
    }

    private static String ah(double sizeAh) {
        return Double.isFinite(sizeAh) ? PlainText.number(sizeAh, 1) : "none";
    }
}

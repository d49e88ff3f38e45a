package curbwatt.charts.report;

import curbwatt.charts.figure.Picture;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.Cautions;
import curbwatt.charts.wording.DoubtText;
import curbwatt.charts.wording.FindingText;
import curbwatt.charts.wording.Headline;
import curbwatt.charts.wording.KeyFigure;
import curbwatt.charts.wording.LedgerText;
import curbwatt.engine.result.RunResult;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** From a run and its pictures to the words of the page. */
final class ReportBuilder {

    private static final String NOTHING_ASKED =
            "The scenario asks nothing of the vehicle. Add requirements to the file to get a verdict.";

    private static final List<ReportModel.FileLink> FILES = List.of(
            new ReportModel.FileLink("result.json", "with every figure"),
            new ReportModel.FileLink("trace.csv", "with the course of voltage, current and charge"),
            new ReportModel.FileLink("charts/", "with the pictures"));

    private ReportBuilder() {}

    /** The model; the first picture stands under the answer. */
    static ReportModel of(RunStory story, List<Picture> pictures) {
        ReadyScenario scenario = story.scenario();
        RunResult result = story.result();
        List<ReportModel.Shown> shown =
                pictures.stream().map(ReportModel.Shown::of).toList();
        List<FindingText> findings = story.verdict().findings().stream()
                .map(finding -> new FindingText(finding, story))
                .toList();
        return new ReportModel(
                scenario.title(),
                scenario.description(),
                scenario.vehicle().name(),
                scenario.source(),
                findings.isEmpty()
                        ? ReportModel.Tone.OPEN
                        : story.verdict().isMet() ? ReportModel.Tone.YES : ReportModel.Tone.NO,
                new Headline(story).sentence(),
                findings.stream().map(ReportBuilder::asked).toList(),
                KeyFigure.of(story),
                shown.get(0),
                findings.isEmpty()
                        ? List.of(NOTHING_ASKED)
                        : findings.stream().map(FindingText::reason).toList(),
                shown.subList(1, shown.size()),
                new ReportTables(story).all(),
                Stream.concat(LedgerText.charge(result).stream(), LedgerText.energy(result).stream())
                        .toList(),
                Stream.concat(DoubtText.of(story).stream(), Stream.of(DoubtText.ALWAYS))
                        .toList(),
                Stream.concat(scenario.assumptions().stream(), Stream.of(nodes(story)))
                        .toList(),
                Cautions.of(scenario.vehicle(), scenario.scene()),
                FILES);
    }

    private static String nodes(RunStory story) {
        return story.scenario().vehicle().auxiliary().isPresent()
                ? "Voltages are those of two nodes: starter battery, alternator and starter hang on one directly, the auxiliary"
                        + " battery on the other, the link joins them; circuits hang on either through the resistance of their"
                        + " feeds."
                : "The voltage is that of one node: battery, alternator and starter hang on it directly, circuits through the"
                        + " resistance of their feeds.";
    }

    private static ReportModel.Asked asked(FindingText text) {
        String asked = text.asked();
        return new ReportModel.Asked(
                text.finding().met(),
                asked.substring(0, 1).toUpperCase(Locale.ROOT) + asked.substring(1),
                text.found(),
                text.limit());
    }
}

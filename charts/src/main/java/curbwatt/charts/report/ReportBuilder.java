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

    private ReportBuilder() {}

    /** The model; the first picture stands under the answer. */
    static ReportModel of(RunStory story, List<Picture> pictures) {
        ReadyScenario scenario = story.scenario();
        RunResult result = story.result();
        List<ReportModel.Shown> shown = pictures.stream()
                .map(picture ->
                        new ReportModel.Shown(picture.name(), picture.caption().title(), picture.svgInline()))
                .toList();
        return new ReportModel(
                scenario.title(),
                scenario.description(),
                scenario.vehicle().name(),
                scenario.source(),
                story.verdict().isMet(),
                !story.verdict().findings().isEmpty(),
                new Headline(story).sentence(),
                story.verdict().findings().stream()
                        .map(finding -> asked(new FindingText(finding, scenario.vehicle(), result)))
                        .toList(),
                KeyFigure.of(story),
                shown.get(0),
                shown.subList(1, shown.size()),
                new ReportTables(result).all(),
                LedgerText.charge(result.charge()),
                LedgerText.energy(result.energy()),
                Stream.concat(DoubtText.of(story).stream(), Stream.of(DoubtText.ALWAYS))
                        .toList(),
                scenario.assumptions(),
                Cautions.of(scenario.vehicle(), scenario.scene()));
    }

    private static ReportModel.Asked asked(FindingText text) {
        String asked = text.asked();
        return new ReportModel.Asked(
                text.finding().met(),
                asked.substring(0, 1).toUpperCase(Locale.ROOT) + asked.substring(1),
                text.found(),
                text.limit(),
                text.reason());
    }
}

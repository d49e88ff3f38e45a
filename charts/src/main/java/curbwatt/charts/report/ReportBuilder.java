package curbwatt.charts.report;

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
import java.util.Optional;
import java.util.stream.Stream;

/** From a run and its pictures to the words of the page. */
final class ReportBuilder {

    private static final String FLASHING =
            "Flashing loads are followed in long steps over many flashes, and edge by edge near every event; run --resolved"
                    + " follows every edge throughout. How near the two come is in docs/model-envelope.md.";
    private static final String NOTHING_ASKED =
            "The scenario asks nothing of the vehicle. Add \"requirements\" to the file to get a verdict.";

    private ReportBuilder() {}

    /** The model; the first picture stands under the answer. */
    static ReportModel of(RunStory story, List<DrawnPicture> pictures) {
        ReadyScenario scenario = story.scenario();
        RunResult result = story.result();
        List<ReportModel.Shown> shown =
                pictures.stream().map(DrawnPicture::shown).toList();
        List<ReportModel.Asked> asked = story.verdict().findings().stream()
                .map(finding -> asked(new FindingText(finding, story)))
                .toList();
        return new ReportModel(
                scenario.title(),
                scenario.description(),
                scenario.vehicle().name(),
                scenario.source(),
                story.verdict().isMet(),
                !asked.isEmpty(),
                new Headline(story).sentence(),
                asked,
                KeyFigure.of(story),
                shown.get(0),
                shown.subList(1, shown.size()),
                new ReportTables(story).all(),
                asked.isEmpty()
                        ? List.of(NOTHING_ASKED)
                        : asked.stream().map(ReportModel.Asked::reason).toList(),
                Optional.of(new ReportModel.Ledgers(LedgerText.charge(result), LedgerText.energy(result))),
                Stream.concat(DoubtText.of(story).stream(), Stream.of(DoubtText.ALWAYS))
                        .toList(),
                Stream.concat(scenario.assumptions().stream(), Stream.of(nodes(story), FLASHING))
                        .toList(),
                Cautions.of(scenario.vehicle(), scenario.scene()),
                List.of(
                        new ReportModel.Beside("result.json", "every figure"),
                        new ReportModel.Beside("trace.csv", "the course of voltage, current and charge")));
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
                text.limit(),
                text.reason());
    }
}

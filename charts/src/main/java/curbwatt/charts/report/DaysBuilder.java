package curbwatt.charts.report;

import curbwatt.charts.run.RosterStory;
import curbwatt.charts.wording.Cautions;
import curbwatt.charts.wording.LedgerText;
import curbwatt.charts.wording.RosterReasons;
import curbwatt.charts.wording.RosterText;
import curbwatt.engine.days.RosterResult;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** From a roster and its pictures to the words of the page. */
final class DaysBuilder {

    private DaysBuilder() {}

    /** The model; the first picture stands under the answer. */
    static ReportModel of(RosterStory story, List<DrawnPicture> pictures) {
        ReadyScenario scenario = story.scenario();
        RosterText text = new RosterText(story);
        RosterReasons reasons = new RosterReasons(story);
        List<ReportModel.Shown> shown =
                pictures.stream().map(DrawnPicture::shown).toList();
        return new ReportModel(
                scenario.title(),
                scenario.description(),
                scenario.vehicle().name(),
                scenario.source(),
                false,
                false,
                text.sentence(),
                List.of(),
                reasons.keyFigures(),
                shown.get(0),
                shown.subList(1, shown.size()),
                new DaysTables(story).all(),
                reasons.sentences(),
                ledgers(story.result()),
                reasons.doubts(),
                Stream.concat(scenario.assumptions().stream(), RosterReasons.ASSUMED.stream())
                        .toList(),
                Cautions.of(scenario.vehicle(), scenario.scene()),
                List.of(new ReportModel.Beside("days.json", "every figure, day by day")));
    }

    /** After a failed start the balance would be of days that nobody lets happen. */
    private static Optional<ReportModel.Ledgers> ledgers(RosterResult result) {
        return result.failedStartDay().isPresent()
                ? Optional.empty()
                : Optional.of(
                        new ReportModel.Ledgers(LedgerText.charge(result.run()), LedgerText.energy(result.run())));
    }
}

package curbwatt.charts.report;

import curbwatt.charts.figure.Picture;
import curbwatt.charts.run.RosterStory;
import curbwatt.charts.wording.Cautions;
import curbwatt.charts.wording.LedgerText;
import curbwatt.charts.wording.RosterReasons;
import curbwatt.charts.wording.RosterText;
import curbwatt.engine.days.Course;
import curbwatt.engine.days.RosterResult;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.stream.Stream;

/** From a roster and its pictures to the words of the page. */
final class DaysBuilder {

    private static final List<ReportModel.FileLink> FILES = List.of(
            new ReportModel.FileLink("days.json", "with every figure, day by day"),
            new ReportModel.FileLink("charts/", "with the pictures"));

    private DaysBuilder() {}

    /** The model; the first picture stands under the answer. */
    static ReportModel of(RosterStory story, List<Picture> pictures) {
        ReadyScenario scenario = story.scenario();
        RosterText text = new RosterText(story);
        RosterReasons reasons = new RosterReasons(story);
        List<ReportModel.Shown> shown =
                pictures.stream().map(ReportModel.Shown::of).toList();
        return new ReportModel(
                scenario.title(),
                scenario.description(),
                scenario.vehicle().name(),
                scenario.source(),
                tone(story.result()),
                text.sentence(),
                List.of(),
                reasons.keyFigures(),
                shown.get(0),
                reasons.sentences(),
                shown.subList(1, shown.size()),
                new DaysTables(story).all(),
                ledgers(story.result()),
                reasons.doubts(),
                Stream.concat(scenario.assumptions().stream(), RosterReasons.ASSUMED.stream())
                        .toList(),
                Cautions.of(scenario.vehicle(), scenario.scene()),
                FILES);
    }

    private static ReportModel.Tone tone(RosterResult result) {
        Course course = result.course();
        if (course == Course.TOO_SHORT) {
            return ReportModel.Tone.OPEN;
        }
        return course == Course.KEEPS_UP && result.lostMarginDay().isEmpty()
                ? ReportModel.Tone.YES
                : ReportModel.Tone.NO;
    }

    /** After a failed start the balance would be of days that nobody lets happen. */
    private static List<String> ledgers(RosterResult result) {
        return result.failedStartDay().isPresent()
                ? List.of()
                : Stream.concat(LedgerText.charge(result.run()).stream(), LedgerText.energy(result.run()).stream())
                        .toList();
    }
}

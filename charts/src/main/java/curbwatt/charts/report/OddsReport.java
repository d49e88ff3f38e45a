package curbwatt.charts.report;

import curbwatt.charts.figure.Caption;
import curbwatt.charts.figure.FanFigure;
import curbwatt.charts.figure.ImportanceFigure;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.figure.TripTimesFigure;
import curbwatt.charts.output.OddsJson;
import curbwatt.charts.output.SamplesCsv;
import curbwatt.charts.wording.Heading;
import curbwatt.charts.wording.OddsInputText;
import curbwatt.charts.wording.OddsLimits;
import curbwatt.charts.wording.OddsText;
import curbwatt.engine.study.odds.Fan;
import curbwatt.engine.study.odds.Importance;
import curbwatt.engine.study.odds.OddsResult;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.List;

/** The report of chances. */
public final class OddsReport {

    private OddsReport() {}

    /** Everything to show of many draws. */
    public static StudyReport of(ReadyScenario scenario, OddsResult result) {
        OddsText text = new OddsText(result, scenario.requirements());
        OddsLimits limits = new OddsLimits(result);
        return new StudyReport(
                scenario,
                text.headline(),
                text.keyFigures(),
                pictures(scenario, result, text),
                text.reasons(),
                new OddsTables(result).all(),
                limits.doubts(),
                StudyReport.inLongSteps(limits.assumptions()),
                OddsJson.of(scenario, result),
                List.of(new StudyReport.CsvTable(
                        "samples.csv", "every draw, its inputs and what came of it", SamplesCsv.of(result))));
    }

    private static List<Picture> pictures(ReadyScenario scenario, OddsResult result, OddsText text) {
        List<Picture> pictures = new ArrayList<>();
        boolean pair = scenario.vehicle().auxiliary().isPresent();
        pictures.add(FanFigure.of(result.fan(), scenario.vehicle(), caption(text.fanHeading(pair))));
        if (!result.importance().isEmpty()) {
            pictures.add(ImportanceFigure.of(
                    result.importance().stream().map(OddsReport::bar).toList(),
                    result.plan().indices()
                            ? "Share of the variance of " + text.outcome()
                            : "Rank correlation with " + text.outcome(),
                    caption(text.importanceHeading())));
        }
        if (!result.tripTimesS().isEmpty()) {
            List<Fan.Stretch> stretches = result.fan().stretches();
            pictures.add(TripTimesFigure.of(
                    result.tripTimesS(),
                    result.draws().size(),
                    stretches.get(stretches.size() - 1).endS(),
                    caption(text.tripHeading())));
        }
        return pictures;
    }

    private static ImportanceFigure.Bar bar(Importance importance) {
        String name = new OddsInputText(importance.input()).name();
        return importance
                .share()
                .map(share -> new ImportanceFigure.Bar(
                        name, share.firstFraction(), share.lowFraction(), share.highFraction()))
                .orElseGet(() -> new ImportanceFigure.Bar(
                        name,
                        importance.rank().rhoRatio(),
                        importance.rank().lowRatio(),
                        importance.rank().highRatio()));
    }

    private static Caption caption(Heading heading) {
        return new Caption(heading.title(), heading.subtitle());
    }
}

package curbwatt.charts.report;

import curbwatt.charts.figure.Caption;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.figure.SettingsFigure;
import curbwatt.charts.output.SettingsFiles;
import curbwatt.charts.wording.DoubtText;
import curbwatt.charts.wording.PlainText;
import curbwatt.charts.wording.SettingText;
import curbwatt.charts.wording.SettingsFinding;
import curbwatt.engine.study.settings.FailureKind;
import curbwatt.engine.study.settings.Recommendation;
import curbwatt.engine.study.settings.SettingsResult;
import curbwatt.engine.study.settings.Spread;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The report on a search for settings.
 *
 * @param scenario the scenario
 * @param result what was found
 */
public record SettingsReport(ReadyScenario scenario, SettingsResult result) {

    /** The report. */
    public StudyReport report() {
        SettingsFinding finding = new SettingsFinding(result);
        SettingsFiles files = new SettingsFiles(scenario.source(), scenario.title(), result);
        return new StudyReport(
                scenario,
                finding.headline(),
                finding.keyFigures(),
                pictures(finding),
                finding.reasons(),
                tables(finding),
                doubts(),
                StudyReport.inLongSteps(assumptions()),
                files.json(),
                List.of(new StudyReport.CsvTable("settings.csv", "every setting tried", files.csv())));
    }

    /** The map with the recommended setting first. */
    private List<Picture> pictures(SettingsFinding finding) {
        int best = result.recommendation().map(advice -> advice.cell().rule()).orElse(0);
        List<Picture> pictures = new ArrayList<>();
        pictures.add(picture(finding, best, finding.title()));
        for (int rule = 0; rule < result.map().recloses().size(); rule++) {
            if (rule != best) {
                pictures.add(picture(
                        finding,
                        rule,
                        "Closing " + SettingText.closes(result.map().recloses().get(rule))));
            }
        }
        return pictures;
    }

    private Picture picture(SettingsFinding finding, int rule, String title) {
        String subtitle =
                PlainText.quoted(result.cutoff()) + " of " + scenario.vehicle().name() + ", closing "
                        + SettingText.closes(result.map().recloses().get(rule)) + "; "
                        + result.map().ofRule(rule).size()
                        + " settings tried"
                        + (advised(rule).isPresent()
                                ? "; the recommended one ringed, round it what a device with coarse steps may take"
                                : "")
                        + (opensAgain(rule)
                                ? "; no start margin is drawn where it opens more than once, because there it"
                                        + " depends on whether it happens to be open when the start is asked for"
                                : "");
        Map<FailureKind, String> reasons =
                Arrays.stream(FailureKind.values()).collect(Collectors.toMap(Function.identity(), SettingText::reason));
        SettingsFigure.Words words = new SettingsFigure.Words(
                new Caption(title, subtitle),
                reasons,
                result.map().tripLevelsV().stream()
                        .map(levelV -> PlainText.number(levelV, 2))
                        .toList(),
                result.map().tripDelaysS().stream().map(SettingText::delay).toList(),
                advised(rule)
                        .map(advice -> SettingText.of(advice.cell().setting()))
                        .orElse(""),
                "as it is: " + SettingText.of(result.present()),
                finding.headline() + " "
                        + finding.counts().stream()
                                .map(line -> line.get(1) + " settings: " + line.get(0))
                                .collect(Collectors.joining("; "))
                        + ".");
        return SettingsFigure.of(rule == 0 ? "settings" : "settings-" + (rule + 1), result, rule, words);
    }

    private boolean opensAgain(int rule) {
        return result.map().ofRule(rule).stream().anyMatch(cell -> cell.fate().trips() > 1);
    }

    /** The recommendation, if it lies in the map of a rule. */
    private Optional<Recommendation> advised(int rule) {
        return result.recommendation().filter(advice -> advice.cell().rule() == rule);
    }

    private List<Table> tables(SettingsFinding finding) {
        List<Table> tables = new ArrayList<>();
        result.recommendation().ifPresent(advice -> tables.add(neighbours(finding, advice)));
        tables.add(Table.of(
                "counts",
                "What the settings do",
                "Of each that fails the first reason.",
                List.of("What", "#Settings"),
                finding.counts()));
        return tables;
    }

    private Table neighbours(SettingsFinding finding, Recommendation advice) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(line(finding, SettingText.of(advice.cell().setting()), advice.cell(), advice.room()));
        advice.neighbours()
                .forEach(next ->
                        lines.add(line(finding, SettingText.of(next.cell().setting()), next.cell(), next.room())));
        return Table.of(
                        "neighbours",
                        "Why not the neighbour?",
                        "The recommended setting, and those next to it in the map; each fails first where its room ends.",
                        List.of("Setting", "#Room", "Where it ends"),
                        lines)
                .marking(0);
    }

    private static List<String> line(
            SettingsFinding finding,
            String name,
            curbwatt.engine.study.settings.Cell cell,
            curbwatt.engine.study.settings.Room room) {
        String end = cell.works()
                ? room.end().map(finding::ending).orElse("not within what was tried")
                : "as the scenario stands: " + SettingText.clause(cell.fate());
        return List.of(name, cell.works() ? SettingText.room(room.roomFactor()) : "none", end);
    }

    private List<String> doubts() {
        return List.of(
                "The room: it is measured in eleven directions. Another mixture of changes may end it earlier, and the"
                        + " sizes of the spread are common practice, not measurements of this vehicle.",
                DoubtText.ALWAYS);
    }

    private List<String> assumptions() {
        Spread spread = result.plan().spread();
        List<String> sentences = new ArrayList<>();
        sentences.add("Room 1 means: the setting still does what was asked when the sensor is wrong by "
                + PlainText.volts(spread.sensorV()) + ", or the delay by " + percent(spread.timerFraction())
                + ", or the battery has lost " + percent(spread.capacityLossFraction())
                + " of its capacity with " + percent(spread.resistanceGrowthFraction())
                + " more resistance, or it is " + PlainText.number(spread.airK(), 0)
                + " K colder or warmer, or the loads draw " + percent(spread.loadFraction())
                + " more or less; or when five of these come together, each at 45 % of its size.");
        sentences.add("A warning level that would lie below a trip level tried moves up to it.");
        return sentences;
    }

    private static String percent(double fraction) {
        return PlainText.percent(fraction);
    }
}

package curbwatt.charts.report;

import curbwatt.charts.figure.Picture;
import curbwatt.charts.wording.Cautions;
import curbwatt.charts.wording.KeyFigure;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a study has to show: the answer first, then the picture, then the reasons, then the assumptions.
 *
 * @param scenario the scenario it started from
 * @param headline the answer in a sentence
 * @param keyFigures the few figures that stand beside the answer
 * @param pictures the pictures, the most telling first; at least one
 * @param reasons why, in sentences
 * @param tables the figures behind it
 * @param doubts which numbers not to trust, in sentences
 * @param assumptions what the study took for granted beyond the scenario, in sentences
 * @param json everything, for other tools: the text of {@code result.json}
 * @param csv tables for other tools
 */
public record StudyReport(
        ReadyScenario scenario,
        String headline,
        List<KeyFigure> keyFigures,
        List<Picture> pictures,
        List<String> reasons,
        List<Table> tables,
        List<String> doubts,
        List<String> assumptions,
        String json,
        List<CsvTable> csv) {

    /**
     * A table for other tools.
     *
     * @param name file name, {@code something.csv}
     * @param holds what it holds, after "with"
     * @param text the file
     */
    public record CsvTable(String name, String holds, String text) {}

    /** Refuses a study without a picture. */
    public StudyReport {
        if (pictures.isEmpty()) {
            throw new IllegalArgumentException("pictures is empty; a study shows at least one");
        }
        keyFigures = List.copyOf(keyFigures);
        pictures = List.copyOf(pictures);
        reasons = List.copyOf(reasons);
        tables = List.copyOf(tables);
        doubts = List.copyOf(doubts);
        assumptions = List.copyOf(assumptions);
        csv = List.copyOf(csv);
    }

    /** Assumptions, and that the runs behind them followed flashing in long steps. */
    static List<String> inLongSteps(List<String> assumptions) {
        List<String> all = new ArrayList<>(assumptions);
        all.add(
                "The runs of this study follow flashing loads in long steps over many flashes, and edge by edge near every"
                        + " event. How near that comes to every edge is in docs/model-envelope.md; try the answer with run"
                        + " --resolved before you rely on it.");
        return List.copyOf(all);
    }

    /** Every file, in memory, by name relative to the study's folder. */
    public SortedMap<String, byte[]> files() {
        SortedMap<String, byte[]> files = new TreeMap<>();
        List<DrawnPicture> drawn = DrawnPicture.all(pictures);
        files.put("report.html", ReportFiles.bytes(HtmlReport.of(model(drawn))));
        files.put("result.json", ReportFiles.bytes(json));
        csv.forEach(table -> files.put(table.name(), ReportFiles.bytes(table.text())));
        drawn.forEach(picture -> picture.addTo(files));
        return Collections.unmodifiableSortedMap(files);
    }

    private ReportModel model(List<DrawnPicture> drawn) {
        List<ReportModel.Shown> shown = drawn.stream().map(DrawnPicture::shown).toList();
        List<String> assumed = new ArrayList<>(assumptions);
        assumed.addAll(scenario.assumptions());
        List<ReportModel.Beside> beside = new ArrayList<>();
        beside.add(new ReportModel.Beside("result.json", "every figure"));
        csv.forEach(table -> beside.add(new ReportModel.Beside(table.name(), table.holds())));
        return new ReportModel(
                scenario.title(),
                scenario.description(),
                scenario.vehicle().name(),
                scenario.source(),
                false,
                false,
                headline,
                List.of(),
                keyFigures,
                shown.get(0),
                shown.subList(1, shown.size()),
                tables,
                reasons,
                Optional.empty(),
                doubts,
                assumed,
                Cautions.of(scenario.vehicle(), scenario.scene()),
                beside);
    }
}

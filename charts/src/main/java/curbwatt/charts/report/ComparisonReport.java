package curbwatt.charts.report;

import curbwatt.charts.figure.Caption;
import curbwatt.charts.figure.OverlayFigure;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.output.ComparisonCsv;
import curbwatt.charts.output.ComparisonJson;
import curbwatt.charts.run.Comparison;
import curbwatt.charts.run.Comparison.Column;
import curbwatt.charts.wording.ComparisonText;
import curbwatt.charts.wording.DoubtText;
import curbwatt.charts.wording.Heading;
import curbwatt.charts.wording.OutcomeRow;
import curbwatt.charts.wording.WayText;
import curbwatt.scenarios.assemble.InputDifference;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The report on a comparison.
 *
 * @param comparison the scenarios and what came of each
 */
public record ComparisonReport(Comparison comparison) {

    /** What every picture and table needs said of it. */
    private static final String SCALE =
            "Every run takes its own file's requirements; a figure is compared as it came out.";

    /** The report. */
    public StudyReport report() {
        ComparisonText text = new ComparisonText(comparison);
        Heading heading = text.heading();
        Picture picture = OverlayFigure.of(
                comparison.columns().stream().map(Column::run).toList(),
                new Caption(heading.title(), heading.subtitle()));
        return new StudyReport(
                titled(),
                text.headline(),
                List.of(),
                List.of(picture),
                text.reasons(),
                List.of(outcomes(), differences()),
                List.of(DoubtText.ALWAYS),
                assumptions(),
                ComparisonJson.of(comparison),
                List.of(new StudyReport.CsvTable(
                        "comparison.csv", "the figures side by side", ComparisonCsv.of(comparison))));
    }

    /** The table of outcomes as lines, heads first, for the terminal. */
    public List<List<String>> lines() {
        List<List<String>> lines = new ArrayList<>();
        List<String> heads = new ArrayList<>(List.of(""));
        comparison.columns().forEach(column -> heads.add(column.label()));
        lines.add(heads);
        lines.addAll(rows());
        return lines;
    }

    private Table outcomes() {
        return Table.of("outcomes", "Side by side", SCALE, heads("Figure"), rows());
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        List<String> verdict = new ArrayList<>(List.of("What is asked"));
        comparison.columns().forEach(column -> verdict.add(verdict(column)));
        rows.add(verdict);
        for (OutcomeRow row : OutcomeRow.all()) {
            List<String> line = new ArrayList<>(List.of(row.name()));
            line.addAll(row.cells(comparison.columns()));
            rows.add(line);
        }
        return rows;
    }

    private static String verdict(Column column) {
        return column.answer().verdict().findings().isEmpty() ? "nothing" : WayText.failure(column.answer());
    }

    private Table differences() {
        List<List<String>> lines = new ArrayList<>();
        for (InputDifference difference : comparison.differences()) {
            List<String> line = new ArrayList<>(List.of(difference.path()));
            difference.values().forEach(value -> line.add(value.orElse("—")));
            lines.add(line);
        }
        return Table.of(
                "differences",
                "What changed in the input",
                lines.isEmpty() ? "The files say the same." : "A dash: the file does not say.",
                heads("Place"),
                lines);
    }

    private List<String> heads(String first) {
        List<String> heads = new ArrayList<>(List.of(first));
        comparison.columns().forEach(column -> heads.add("#" + column.label()));
        return heads;
    }

    /** Sentences that all share stand once; others say whose they are. */
    private List<String> assumptions() {
        Set<String> sentences = new LinkedHashSet<>();
        for (Column column : comparison.columns()) {
            for (String sentence : column.scenario().assumptions()) {
                boolean shared = comparison.columns().stream()
                        .allMatch(other -> other.scenario().assumptions().contains(sentence));
                sentences.add(shared ? sentence : column.letter() + ": " + sentence);
            }
        }
        return List.copyOf(sentences);
    }

    /** The first scenario with the words of the whole; its assumptions are among ours. */
    private ReadyScenario titled() {
        ReadyScenario first = comparison.columns().get(0).scenario();
        String names = comparison.columns().stream().map(Column::label).collect(Collectors.joining(", "));
        return new ReadyScenario(
                comparison.columns().stream()
                        .map(column -> column.scenario().source())
                        .distinct()
                        .collect(Collectors.joining(", ")),
                "Side by side: " + names,
                "",
                first.vehicle(),
                first.circuitPlans(),
                first.scene(),
                first.roster(),
                first.requirements(),
                first.studies(),
                first.traceSpacingS(),
                List.of(),
                first.warnings());
    }
}

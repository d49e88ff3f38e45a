package curbwatt.charts.command;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.DoubtText;
import curbwatt.charts.wording.FindingText;
import curbwatt.charts.wording.Headline;
import curbwatt.charts.wording.KeyFigure;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The verdict in a few lines at the terminal; marks are words, so that they work without colour. */
final class VerdictPrinter {

    private VerdictPrinter() {}

    /** Prints it; quietly means the answer and the folder alone. */
    static void print(RunStory story, Path folder, boolean quiet, PrintWriter out) {
        out.println(new Headline(story).sentence());
        if (quiet) {
            return;
        }
        List<FindingText> findings = story.verdict().findings().stream()
                .map(finding -> new FindingText(finding, story))
                .toList();
        List<KeyFigure> figures = KeyFigure.of(story);
        out.println();
        List<List<String>> lines = new ArrayList<>();
        findings.forEach(finding ->
                lines.add(List.of(finding.finding().met() ? "met" : "NOT MET", finding.found(), finding.asked())));
        Columns.print(3, lines, out);
        out.println();
        Columns.figures(figures, out);
        List<String> doubts = DoubtText.of(story);
        if (!doubts.isEmpty()) {
            out.println();
            out.println("Least to be trusted:");
            doubts.forEach(doubt -> out.println("  - " + doubt));
        }
        out.println();
        out.println("Report: " + folder.resolve("report.html"));
    }
}

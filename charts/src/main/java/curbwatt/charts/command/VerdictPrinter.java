package curbwatt.charts.command;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.DoubtText;
import curbwatt.charts.wording.FindingText;
import curbwatt.charts.wording.Headline;
import curbwatt.charts.wording.KeyFigure;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

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
                .map(finding -> new FindingText(
                        finding, story.scenario().vehicle(), story.result()))
                .toList();
        List<KeyFigure> figures = KeyFigure.of(story);
        int width = Stream.concat(
                        findings.stream().map(FindingText::asked), figures.stream().map(KeyFigure::name))
                .mapToInt(String::length)
                .max()
                .orElse(0);
        out.println();
        for (FindingText finding : findings) {
            out.println((finding.finding().met() ? "  met      " : "  NOT MET  ") + padded(finding.asked(), width) + "  "
                    + finding.found());
        }
        out.println();
        for (KeyFigure figure : figures) {
            out.println("           " + padded(figure.name(), width) + "  " + figure.value()
                    + (figure.remark().isEmpty() ? "" : ", " + figure.remark()));
        }
        if (!story.verdict().doubts().isEmpty()) {
            out.println();
            out.println("Do not trust:");
            story.verdict().doubts().forEach(doubt -> out.println("  - " + DoubtText.sentence(doubt)));
        }
        out.println();
        out.println("Report: " + folder.resolve("report.html"));
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}

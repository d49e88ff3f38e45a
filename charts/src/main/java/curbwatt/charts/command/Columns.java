package curbwatt.charts.command;

import curbwatt.charts.wording.KeyFigure;
import java.io.PrintWriter;
import java.util.List;

/** Lines of words and numbers set in columns, for the terminal. */
final class Columns {

    private Columns() {}

    /** Prints figures, each with its remark. */
    static void figures(List<KeyFigure> figures, PrintWriter out) {
        print(
                2,
                figures.stream()
                        .map(figure -> List.of(
                                figure.name(),
                                figure.value() + (figure.remark().isEmpty() ? "" : ", " + figure.remark())))
                        .toList(),
                out);
    }

    /**
     * Prints lines as columns, two spaces apart, indented by two.
     *
     * @param numbers index of the first column that holds numbers; it and those after it stand to the right
     * @param lines texts, as many in each line
     */
    static void print(int numbers, List<List<String>> lines, PrintWriter out) {
        int columns = lines.isEmpty() ? 0 : lines.get(0).size();
        int[] widths = new int[columns];
        for (List<String> line : lines) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], line.get(i).length());
            }
        }
        for (List<String> line : lines) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                String space = " ".repeat(widths[i] - line.get(i).length());
                text.append("  ").append(i < numbers ? line.get(i) + space : space + line.get(i));
            }
            out.println(text.toString().stripTrailing());
        }
    }
}

package curbwatt.charts.output;

import curbwatt.charts.run.Comparison;
import curbwatt.charts.run.Comparison.Column;
import curbwatt.charts.wording.OutcomeRow;

/** The figures of a comparison as a table for other tools: a line for each figure, a column for each run. */
public final class ComparisonCsv {

    private ComparisonCsv() {}

    /** The table; where a run has no such figure, nothing stands. */
    public static String of(Comparison comparison) {
        StringBuilder csv = new StringBuilder("figure");
        comparison.columns().forEach(column -> csv.append(',').append(column.letter()));
        csv.append('\n');
        for (OutcomeRow row : OutcomeRow.all()) {
            csv.append(row.key());
            for (Column column : comparison.columns()) {
                csv.append(',');
                row.value().apply(column).ifPresent(value -> csv.append(DigitText.of(value)));
            }
            csv.append('\n');
        }
        return csv.toString();
    }
}

package curbwatt.charts.output;

import curbwatt.charts.run.Comparison;
import curbwatt.charts.run.Comparison.Column;
import curbwatt.charts.wording.OutcomeRow;
import curbwatt.scenarios.assemble.InputDifference;
import java.util.ArrayList;
import java.util.List;

/** A comparison for other tools; {@code docs/result.md} explains it. */
public final class ComparisonJson {

    private ComparisonJson() {}

    /** The whole document. */
    public static String of(Comparison comparison) {
        return JsonText.of(new JsonObject()
                .with("study", "compare")
                .with("format", 1)
                .with(
                        "columns",
                        comparison.columns().stream()
                                .map(ComparisonJson::column)
                                .toList())
                .with(
                        "differences",
                        comparison.differences().stream()
                                .map(ComparisonJson::difference)
                                .toList()));
    }

    private static JsonObject column(Column column) {
        JsonObject object = new JsonObject()
                .with("letter", column.letter())
                .with("name", column.name())
                .with("source", column.scenario().source())
                .with("title", column.scenario().title())
                .with("asked", !column.answer().verdict().findings().isEmpty())
                .with("met", column.answer().isMet());
        for (OutcomeRow row : OutcomeRow.all()) {
            object.with(row.key(), row.value().apply(column));
        }
        return object;
    }

    private static JsonObject difference(InputDifference difference) {
        List<String> values = new ArrayList<>();
        difference.values().forEach(value -> values.add(value.orElse(null)));
        return new JsonObject().with("path", difference.path()).with("values", values);
    }
}

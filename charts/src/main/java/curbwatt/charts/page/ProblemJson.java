package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.scenarios.problem.Problem;
import java.util.List;
import java.util.Locale;

/** Problems of a scenario, in the words of the command line, with the place that lets the page show them at a field. */
final class ProblemJson {

    private ProblemJson() {}

    static List<JsonObject> of(List<Problem> problems) {
        return problems.stream().map(ProblemJson::of).toList();
    }

    private static JsonObject of(Problem problem) {
        return new JsonObject()
                .with("severity", problem.severity().name().toLowerCase(Locale.ROOT))
                .with("path", problem.position().path())
                .with("line", problem.position().line())
                .with("column", problem.position().column())
                .with("message", problem.message())
                .with("remedy", problem.remedy());
    }
}

package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import java.io.IOException;
import java.util.List;

/**
 * Takes a scenario file's text, comments and all, and answers with the document and everything that is wrong with it.
 *
 * @param scenarios reads the scenario
 */
record OpenEndpoint(Scenarios scenarios) implements Endpoint {

    @Override
    public String method() {
        return "POST";
    }

    @Override
    public void answer(Visit visit) throws IOException {
        visit.send(200, opened(scenarios, "scenario", visit.text()));
    }

    /** The document as text, {@code null} where the text is no JSON; its problems; whether it can be run. */
    static JsonObject opened(Scenarios scenarios, String name, String text) {
        String document = null;
        List<Problem> problems;
        boolean runs = false;
        try {
            document = scenarios.plain(name, text);
            problems = scenarios.read(name, text).warnings();
            runs = true;
        } catch (ScenarioException e) {
            problems = e.problems();
        }
        return new JsonObject()
                .with("document", document)
                .with("runs", runs)
                .with("problems", ProblemJson.of(problems));
    }
}

package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.file.Part;
import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import java.util.Map;

/**
 * What the page needs to begin: the scenario to open on, the names of the demo scenarios, the parts that a scenario may
 * name.
 *
 * @param scenarios reads scenarios and holds the parts
 * @param first the scenario to open on
 */
record StartEndpoint(Scenarios scenarios, FirstScenario first) implements Endpoint {

    @Override
    public String method() {
        return "GET";
    }

    @Override
    public void answer(Visit visit) throws IOException {
        visit.send(
                200,
                OpenEndpoint.opened(scenarios, first.name(), first.text())
                        .with("name", first.name())
                        .with("text", first.text())
                        .with(
                                "demos",
                                DemoScenarios.names().stream()
                                        .map(name -> new JsonObject()
                                                .with("name", name)
                                                .with(
                                                        "title",
                                                        scenarios.demo(name).title()))
                                        .toList())
                        .with(
                                "parts",
                                scenarios.catalogue().parts().stream()
                                        .map(StartEndpoint::part)
                                        .toList()));
    }

    private static JsonObject part(Part part) {
        JsonObject figures = new JsonObject();
        for (Map.Entry<String, String> figure : part.figures().entrySet()) {
            figures.with(figure.getKey(), figure.getValue());
        }
        return new JsonObject()
                .with("name", part.name())
                .with("kind", part.kind().toString())
                .with("title", part.title())
                .with("source", part.source())
                .with("figures", figures);
    }
}

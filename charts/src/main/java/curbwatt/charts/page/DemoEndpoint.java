package curbwatt.charts.page;

import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;

/**
 * Hands out a scenario that ships with the program, named in the address as {@code ?name=}.
 *
 * @param scenarios reads the scenario
 */
record DemoEndpoint(Scenarios scenarios) implements Endpoint {

    @Override
    public String method() {
        return "GET";
    }

    @Override
    public void answer(Visit visit) throws IOException {
        String name = visit.word("name").orElse("");
        String text = DemoScenarios.text(name);
        visit.send(200, OpenEndpoint.opened(scenarios, "demo:" + name, text).with("text", text));
    }
}

package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.stock.DemoScenarios;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WarmUpTest {

    /** A scenario that can't be read is the page's to tell of, and whoever comes next finds the place free. */
    @ParameterizedTest
    @ValueSource(strings = {"night-closure", ""})
    void itKeepsNoPlaceAndNoFault(String demo) {
        Turns turns = Turns.of(1);
        String text = demo.isEmpty() ? "{ \"format\": 1 " : DemoScenarios.text(demo);
        new WarmUp(new Scenarios(), turns, new PageRun()).run(new FirstScenario("mine", text));
        assertThat(turns.free()).isEqualTo(1);
    }
}

package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import curbwatt.scenarios.stock.DemoScenarios;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DemoScenariosTest {
    private static final Map<String, List<String>> EXPECTED_WARNINGS = Map.of(
            "winter-breakdown", List.of("vehicle.cutoffs[0].tripV"),
            "winter-shifts", List.of("scene.phases[3]"),
            "charger-truck", List.of("vehicle.auxiliary.link"),
            "high-idle", List.of("scene.phases[1]"),
            "tapped-feed", List.of("vehicle.circuits[5].fuse"));

    private final Scenarios scenarios = new Scenarios();

    static List<String> names() {
        return DemoScenarios.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void eachOpens(String name) {
        ReadyScenario ready = scenarios.demo(name);

        assertThat(ready.source()).isEqualTo("demo:" + name);
        assertThat(ready.warnings())
                .extracting(warning -> warning.position().path())
                .isEqualTo(EXPECTED_WARNINGS.getOrDefault(name, List.of()));
        assertThat(ready.vehicle().name())
                .isEqualTo(ready.vehicle().auxiliary().isEmpty() ? "Incident truck 4" : "Incident truck 7");
        assertThat(ready.vehicle().circuits()).hasSize(7);
        assertThat(ready.vehicle().loads().count()).isBetween(10L, 25L);
        assertThat(ready.requirements()).isNotEmpty();
        assertThat(ready.assumptions()).isNotEmpty();
    }

    /** Whoever leaves out {@code demo:} is told of it, and nobody else is. */
    @Test
    void aDemosNameInThePlaceOfAFileIsAnsweredWithHowToWriteIt() {
        assertThat(remedy("shed-in-steps"))
                .isEqualTo("Write demo:shed-in-steps for the demo of this name, or check the name and the folder.");
        assertThat(remedy("shed-in-steps.json")).startsWith("Write demo:shed-in-steps for");
        assertThat(remedy("trucks/shed-in-steps.json")).isEqualTo("Check the name and the folder.");
    }

    private String remedy(String file) {
        try {
            return scenarios.open(Path.of(file)).source();
        } catch (ScenarioException e) {
            assertThat(e.problems()).extracting(Problem::message).containsExactly("The file does not exist.");
            return e.problems().get(0).remedy();
        }
    }

    @Test
    void anUnknownNameIsAnsweredWithTheNearest() {
        assertThatThrownBy(() -> scenarios.demo("nightclosure"))
                .isInstanceOfSatisfying(
                        ScenarioException.class,
                        e -> assertThat(e.problems())
                                .extracting(Problem::remedy)
                                .containsExactly(
                                        "Did you mean 'night-closure'? There are 'night-closure',"
                                                + " 'two-batteries', 'high-idle', 'shed-in-steps', 'quiet-watch', 'lane-watch',"
                                                + " 'charger-truck', 'cold-pack', 'tapped-feed', 'winter-breakdown', 'winter-shifts'."));
    }
}

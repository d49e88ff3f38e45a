package curbwatt.scenarios.stock;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.file.Part;
import curbwatt.scenarios.file.PartKind;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CatalogueTest {
    private static final Scenarios SCENARIOS = new Scenarios();
    private static final Map<PartKind, String> USUAL = Map.of(
            PartKind.BATTERY, "\"battery\": { \"part\": \"battery-flooded-74\" }",
            PartKind.ALTERNATOR, "\"alternator\": { \"part\": \"alternator-120\" }",
            PartKind.LOAD, "",
            PartKind.LINK, "\"link\": { \"part\": \"charge-relay-120\" }",
            PartKind.STARTER, "\"starter\": { \"part\": \"starter-4-cylinder\" }");

    static List<Part> parts() {
        return Catalogue.shipped().parts();
    }

    @ParameterizedTest
    @MethodSource("parts")
    void eachPartMakesAVehicle(Part part) {
        ReadyScenario ready = SCENARIOS.read("named", scenario(part, "\"part\": \"" + part.name() + "\""));

        assertThat(ready.assumptions()).anyMatch(sentence -> sentence.contains("(" + part.name() + ")"));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void itsFiguresWrittenOutMakeTheSameVehicle(Part part) {
        String figures = part.figures().entrySet().stream()
                .map(figure -> "\"" + figure.getKey() + "\": " + json(figure.getValue()))
                .collect(Collectors.joining(", "));
        ReadyScenario named = SCENARIOS.read("named", scenario(part, "\"part\": \"" + part.name() + "\""));
        ReadyScenario written = SCENARIOS.read("written", scenario(part, figures));

        assertThat(written.vehicle().circuits()).isEqualTo(named.vehicle().circuits());
        assertThat(written.vehicle().battery().battery())
                .usingRecursiveComparison()
                .isEqualTo(named.vehicle().battery().battery());
        assertThat(written.vehicle().auxiliary().orElseThrow().installation())
                .usingRecursiveComparison()
                .isEqualTo(named.vehicle().auxiliary().orElseThrow().installation());
        assertThat(written.vehicle().auxiliary().orElseThrow().link())
                .isEqualTo(named.vehicle().auxiliary().orElseThrow().link());
        assertThat(written.vehicle().starting()).isEqualTo(named.vehicle().starting());
        assertThat(written.vehicle().alternator().orElseThrow().maximumA(1500))
                .isEqualTo(named.vehicle().alternator().orElseThrow().maximumA(1500));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void eachPartSaysWhereItsFiguresComeFrom(Part part) {
        assertThat(part.title()).isNotBlank();
        assertThat(part.source()).isNotBlank();
        assertThat(part.toString()).startsWith(part.name() + ": ").contains("Source: " + part.source());
    }

    @Test
    void namesAreUniqueAndEachKindHasSome() {
        Set<String> names = new HashSet<>();
        assertThat(parts()).allMatch(part -> names.add(part.name())).hasSizeGreaterThan(30);
        for (PartKind kind : PartKind.values()) {
            assertThat(Catalogue.shipped().parts(kind)).as(kind.toString()).hasSizeGreaterThan(3);
        }
    }

    @Test
    void nearNamesAreOfTheKindAskedFor() {
        assertThat(Catalogue.shipped().nearest(PartKind.BATTERY, "agm-92"))
                .first()
                .isEqualTo("battery-agm-92");
        assertThat(Catalogue.shipped().nearest(PartKind.STARTER, "battery-agm-92"))
                .isEmpty();
    }

    private static String scenario(Part part, String figures) {
        String own = "\"" + part.kind() + "\": { " + figures + " }";
        String load = part.kind() == PartKind.LOAD ? "{ \"name\": \"Load\", " + figures + " }" : "";
        boolean second = part.battery()
                .filter(battery -> !battery.chemistry().orElseThrow().isLead())
                .isPresent();
        String others = USUAL.entrySet().stream()
                .filter(entry -> entry.getKey() != PartKind.LOAD && entry.getKey() != PartKind.LINK)
                .map(entry -> entry.getKey() == part.kind() && !second ? own : entry.getValue())
                .collect(Collectors.joining(",\n"));
        return """
            { "format": 1, "title": "Part",
              "vehicle": { "name": "Truck", %s,
                "auxiliary": { %s, %s },
                "circuits": [{ "name": "Circuit", "loads": [%s] }] },
              "scene": { "phases": [{ "name": "Watch", "engine": "off", "durationMin": 60, "airC": 15 }] },
              "requirements": { "restartMarginV": 0 } }
            """.formatted(
                        others,
                        second ? own : "\"battery\": { \"part\": \"battery-agm-deep-75\" }",
                        part.kind() == PartKind.LINK ? own : USUAL.get(PartKind.LINK),
                        load);
    }

    private static String json(String figure) {
        return figure.matches("[-0-9.eE]+|true|false|[\\[{].*") ? figure : "\"" + figure + "\"";
    }
}

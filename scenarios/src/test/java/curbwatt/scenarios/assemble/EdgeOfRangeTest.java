package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.json.SchemaObjects;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** A file with every key in it opens; with any number at the edge of its range, no refusal comes from the engine. */
class EdgeOfRangeTest {
    private static final Scenarios SCENARIOS = new Scenarios();
    /** What the complete file can have in the place of an object of its own, since no object has every key. */
    private static final List<Variant> VARIANTS = List.of(
            new Variant(
                    "link",
                    "\"kind\": \"charge relay\", \"resistanceMilliohm\": 2, \"closeV\": 13.4, \"closeDelayS\": 9,"
                            + "\"openV\": 12.7, \"openDelayS\": 9"),
            new Variant("link", "\"kind\": \"diode\", \"resistanceMilliohm\": 3, \"forwardV\": 0.6"),
            new Variant("link", "\"kind\": \"solid\", \"resistanceMilliohm\": 3"),
            new Variant(
                    "auxiliary\": \\{\\s*\"battery",
                    "\"chemistry\": \"lfp\", \"capacityAh\": 100, \"resistanceMilliohm\": 12, \"continuousA\": 80"),
            new Variant(
                    "idleControl",
                    "\"raiseAboveDischargeA\": 5, \"releaseBelowDischargeA\": -3, \"highIdleRpm\": 1000"));

    private static final Pattern NUMBER = Pattern.compile("\"(\\w+)\": (-?[0-9.]+)");

    private static String complete() throws IOException {
        return Files.readString(Path.of("src/test/resources/complete.json"));
    }

    /**
     * An object in the place of one of the complete file.
     *
     * @param key pattern of the key
     * @param entries what stands in it
     */
    private record Variant(String key, String entries) {
        String in(String complete) {
            return Pattern.compile("(\"" + key + "\": )\\{[^}]*\\}")
                    .matcher(complete)
                    .replaceFirst("$1{ " + Matcher.quoteReplacement(entries) + " }");
        }
    }

    private static List<String> variants() throws IOException {
        String complete = complete();
        return Stream.concat(Stream.of(complete), VARIANTS.stream().map(variant -> variant.in(complete)))
                .toList();
    }

    @Test
    void eachVariantOpens() throws IOException {
        assertThat(variants())
                .doesNotHaveDuplicates()
                .allSatisfy(
                        text -> assertThat(SCENARIOS.read("variant.json", text).warnings())
                                .hasSize(2));
    }

    @Test
    void theCompleteFileOpensAndUsesEveryKey() throws IOException {
        ReadyScenario ready = SCENARIOS.read("complete.json", complete());

        assertThat(ready.warnings())
                .extracting(warning -> warning.position().path())
                .containsExactly("vehicle.alternator.table", "scene.phases[3]");
        String all = String.join("\n", variants());
        for (JsonNode object : SchemaObjects.all().values()) {
            assertThat(all)
                    .contains(object.path("properties").propertyNames().stream()
                            .map(key -> "\"" + key + "\":")
                            .toList());
        }
    }

    @Test
    void noEdgeOfARangeIsRefusedByTheEngine() throws IOException {
        Map<String, List<String>> edges = edges();
        TreeSet<String> late = new TreeSet<>();
        int tried = 0;
        for (String text : variants()) {
            Matcher number = NUMBER.matcher(text);
            while (number.find()) {
                for (String edge : edges.getOrDefault(number.group(1), List.of())) {
                    String edited = text.substring(0, number.start(2)) + edge + text.substring(number.end(2));
                    problems(edited).stream()
                            .filter(problem -> problem.message().startsWith("Here the figures don't go together"))
                            .forEach(problem -> late.add(problem.position().path() + ": " + problem.message()));
                    tried++;
                }
            }
        }
        assertThat(tried).isGreaterThan(80);
        assertThat(late).isEmpty();
    }

    private static Map<String, List<String>> edges() {
        Map<String, List<String>> edges = new HashMap<>();
        SchemaObjects.all()
                .values()
                .forEach(object -> object.path("properties").properties().stream()
                        .filter(key -> key.getValue().has("minimum"))
                        .forEach(key -> edges.put(
                                key.getKey(),
                                List.of(
                                        key.getValue().path("minimum").toString(),
                                        key.getValue().path("maximum").toString()))));
        return edges;
    }

    private static List<Problem> problems(String text) {
        try {
            return new ArrayList<>(SCENARIOS.read("edited.json", text).warnings());
        } catch (ScenarioException e) {
            return e.problems();
        }
    }
}

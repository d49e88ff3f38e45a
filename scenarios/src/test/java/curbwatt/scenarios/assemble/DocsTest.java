package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.file.Part;
import curbwatt.scenarios.json.SchemaObjects;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** The pages about scenario files say what the program does. */
class DocsTest {
    private static final Scenarios SCENARIOS = new Scenarios();
    private static final Path DOCS = Path.of("../docs");
    private static final Pattern EXAMPLE = Pattern.compile("```json\n(\\{.*?\n\\})\n```", Pattern.DOTALL);

    static List<Path> refused() throws IOException {
        return RefusedFilesTest.files();
    }

    @Test
    void everyKeyStandsInTheTablesAsInTheSchema() throws IOException {
        String page = Files.readString(DOCS.resolve("scenario-files.md"));
        List<String> rows = new ArrayList<>();
        SchemaObjects.all()
                .forEach((name, object) -> object.path("properties")
                        .properties()
                        .forEach(key -> rows.add(row(key.getKey(), SchemaObjects.resolved(key.getValue()), object))));
        assertThat(rows).hasSizeGreaterThan(100);
        assertThat(page.lines()).containsAll(rows);
        assertThat(page.lines().filter(line -> line.startsWith("| `"))).hasSameSizeAs(rows);
    }

    @Test
    void theFirstScenarioOpens() throws IOException {
        Matcher example = EXAMPLE.matcher(Files.readString(DOCS.resolve("scenario-files.md")));
        assertThat(example.find()).isTrue();
        assertThat(SCENARIOS.read("example", example.group(1)).warnings()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("refused")
    void everyProblemIsExplainedInTheWordsInWhichItIsTold(Path file) throws IOException {
        String page = Files.readString(DOCS.resolve("problems.md"));
        Problem problem = problem(file);

        assertThat(page).contains("> " + problem.message());
        if (!problem.remedy().isEmpty()) {
            assertThat(page).contains("> " + problem.remedy());
        }
    }

    @Test
    void everyPartIsListedWithItsSource() throws IOException {
        String page = Files.readString(DOCS.resolve("parts.md"));
        assertThat(page.lines().toList())
                .containsAll(SCENARIOS.catalogue().parts().stream()
                        .map(DocsTest::row)
                        .toList());
    }

    private static Problem problem(Path file) {
        try {
            return SCENARIOS.open(file).warnings().get(0);
        } catch (ScenarioException e) {
            return e.problems().get(0);
        }
    }

    private static String row(Part part) {
        String figures = part.figures().entrySet().stream()
                .map(figure -> "`" + figure.getKey() + "` " + figure.getValue())
                .collect(Collectors.joining(", "));
        return "| `" + part.name() + "` | " + part.title() + " | " + figures + " | " + part.source() + " |";
    }

    private static String row(String name, JsonNode key, JsonNode object) {
        List<String> needed = new ArrayList<>();
        object.path("required").forEach(entry -> needed.add(entry.stringValue()));
        String leftOut =
                needed.contains(name) ? "**needed**" : key.has("default") ? "`" + key.path("default") + "`" : "";
        return "| `" + name + "` | " + allowed(key) + " | " + leftOut + " | "
                + key.path("description").stringValue() + " |";
    }

    private static String allowed(JsonNode key) {
        if (key.has("minimum")) {
            boolean whole = key.path("type").stringValue("").equals("integer");
            return key.path("minimum") + " to " + key.path("maximum") + (whole ? " (whole)" : "");
        }
        if (key.has("enum")) {
            List<String> words = new ArrayList<>();
            key.path("enum").forEach(word -> words.add("`" + word + "`"));
            return words.size() < 8 ? String.join(", ", words) : words.get(0) + " … " + words.get(words.size() - 1);
        }
        if (key.has("const")) {
            return "`" + key.path("const") + "`";
        }
        return switch (key.path("type").stringValue()) {
            case "string" -> "text";
            case "boolean" -> "true or false";
            case "array" -> "list";
            default -> "object";
        };
    }
}

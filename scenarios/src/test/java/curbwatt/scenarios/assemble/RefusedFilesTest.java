package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each file in {@code refused} says itself what is to be found in it: at the end of the line concerned, {@code //! path
 * | part of the message | part of the remedy}, with {@code @N} before it where the line is another, and {@code warning}
 * where it is one. Nothing else may be found.
 */
class RefusedFilesTest {
    private static final Path FOLDER = Path.of("src/test/resources/refused");
    private static final Pattern MARK = Pattern.compile("//! (?<warning>warning )?(?:@(?<line>[0-9]+)"
            + " )?(?<path>[^|]*)\\|(?<message>[^|]*)\\|(?<remedy>(?:(?!//!).)*)");

    private final Scenarios scenarios = new Scenarios();

    private record Expected(int line, String path, boolean warning, String message, String remedy) {}

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void isRefusedWithWhatItSays(Path file) throws IOException {
        List<Expected> expected = expected(Files.readAllLines(file));
        List<Problem> found = problems(file);

        assertThat(found).as("problems").hasSameSizeAs(expected);
        for (int i = 0; i < found.size(); i++) {
            Problem problem = found.get(i);
            SoftAssertions all = new SoftAssertions();
            all.assertThat(problem.position().file()).isEqualTo(file.toString());
            all.assertThat(problem.position().line())
                    .as("line")
                    .isEqualTo(expected.get(i).line());
            all.assertThat(problem.position().column()).as("column").isPositive();
            all.assertThat(problem.position().path()).isEqualTo(expected.get(i).path());
            all.assertThat(problem.severity() == Problem.Severity.WARNING)
                    .as("is a warning")
                    .isEqualTo(expected.get(i).warning());
            all.assertThat(problem.message()).contains(expected.get(i).message());
            all.assertThat(problem.remedy()).contains(expected.get(i).remedy());
            all.assertThat(problem.message() + problem.remedy())
                    .doesNotContainPattern("Exception|tools\\.jackson|networknt");
            all.assertAll();
        }
    }

    @Test
    void everyFileExpectsSomething() throws IOException {
        for (Path file : files()) {
            assertThat(expected(Files.readAllLines(file))).as(file.toString()).isNotEmpty();
        }
    }

    private List<Problem> problems(Path file) {
        try {
            return scenarios.open(file).warnings();
        } catch (ScenarioException e) {
            return e.problems();
        }
    }

    private static List<Expected> expected(List<String> lines) {
        List<Expected> expected = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Matcher mark = MARK.matcher(lines.get(i));
            while (mark.find()) {
                expected.add(new Expected(
                        mark.group("line") == null ? i + 1 : Integer.parseInt(mark.group("line")),
                        mark.group("path").strip(),
                        mark.group("warning") != null,
                        mark.group("message").strip(),
                        mark.group("remedy").strip()));
            }
        }
        return expected;
    }
}

package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {

    @TempDir
    private Path folder;

    @Test
    void runSaysTheVerdictAndWritesTheReport() {
        Path out = folder.resolve("report");
        Said said = Said.by("run", "demo:lane-watch", "--out", out.toString());
        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .startsWith("Cut off too early: ")
                .contains("NOT MET", "met", "Report: " + out.resolve("report.html"));
        assertThat(out).isDirectoryContaining("glob:**/{report.html,result.json,trace.csv,charts}");
    }

    @Test
    void quietlyItSaysTheAnswerAlone() {
        Said said = Said.by(
                "run",
                "demo:lane-watch",
                "--quiet",
                "--trace-spacing",
                "60",
                "--out",
                folder.resolve("q").toString());
        assertThat(said.exitCode()).isZero();
        assertThat(said.out().lines()).hasSize(1);
        assertThat(said.err()).isEmpty();
    }

    @Test
    void aBrokenScenarioGetsAllItsProblemsAndNoFiles() throws IOException {
        Path file = Files.writeString(folder.resolve("broken.json"), """
                {
                  "format": 1,
                  "titel": "Misspelt",
                  "vehicle": { "name": 7 }
                }
                """);
        Path out = folder.resolve("report");
        Said said = Said.by("run", file.toString(), "--out", out.toString());
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err())
                .contains("broken.json:3:", "titel", "title", "broken.json:4:", "Nothing was written.")
                .doesNotContain("\tat ");
        assertThat(said.out()).isEmpty();
        assertThat(out).doesNotExist();
    }

    @Test
    void aMissingFileIsTheInputsFault() {
        Said said = Said.by("run", folder.resolve("none.json").toString());
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("none.json");
    }

    @Test
    void aDemoThatIsNotThereIsAnsweredWithTheNearestName() {
        Said said = Said.by("check", "demo:lane-wach");
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("lane-watch");
    }

    @Test
    void aFolderWithForeignFilesStaysAsItIs() throws IOException {
        Files.writeString(folder.resolve("notes.txt"), "mine");
        Said said = Said.by("run", "demo:lane-watch", "--out", folder.toString());
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("notes.txt", "Nothing was written.");
        try (Stream<Path> list = Files.list(folder)) {
            assertThat(list).hasSize(1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-5", "1e9", "NaN", "ten"})
    void aTraceSpacingOutOfRangeIsRefused(String spacing) {
        Said said = Said.by(
                "run",
                "demo:lane-watch",
                "--trace-spacing",
                spacing,
                "--out",
                folder.resolve("x").toString());
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("--trace-spacing");
        assertThat(folder.resolve("x")).doesNotExist();
    }

    @Test
    void aMisspeltOptionAndAMisspeltCommandGetTheNearestName() {
        Said option = Said.by("run", "demo:lane-watch", "--trace-spcing", "5");
        assertThat(option.exitCode()).isEqualTo(2);
        assertThat(option.err()).contains("--trace-spcing", "nearest: --trace-spacing", "curbwatt run --help");
        assertThat(Said.by("run", "demo:lane-watch", "--otu=x").err()).contains("no option '--otu'; nearest: --out");
        assertThat(Said.by("run", "demo:lane-watch", "another").err()).contains("no argument 'another' here");
        Said command = Said.by("chek", "demo:lane-watch");
        assertThat(command.exitCode()).isEqualTo(2);
        assertThat(command.err()).contains("no command 'chek'; nearest: check");
    }

    @Test
    void aMissingArgumentIsNamed() {
        Said said = Said.by("run");
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("SCENARIO");
    }

    @Test
    void withoutACommandItExplainsItself() {
        Said said = Said.by();
        assertThat(said.exitCode()).isZero();
        assertThat(said.out()).contains("run", "check", "parts", "label", "demo", "Exit codes:");
    }

    @Test
    void checkListsLoadsAndBudget() {
        Said said = Said.by("check", "demo:night-closure");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out()).contains("no error", "mean A", "peak A", "Alternator, hot, at", "rpm up");
        assertThat(Said.by("check", "demo:night-closure", "--json").out()).startsWith("{\n  \"version\": 1,");
    }

    @Test
    void partsListsKindsAndTellsSources() {
        assertThat(Said.by("parts").out()).contains("battery:", "alternator:", "load:", "starter:", "battery-agm-92");
        assertThat(Said.by("parts", "starter").out()).doesNotContain("battery-agm-92");
        assertThat(Said.by("parts", "battery-agm-92").out()).contains("c20Ah", "Source: ");
        Said said = Said.by("parts", "batery-agm-92");
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("nearest: battery-agm-92");
    }

    @Test
    void demosAreListedPrintedAndCopiedButNeverOver() {
        assertThat(Said.by("demo").out()).contains("demo:night-closure", "demo:lane-watch", "demo:winter-breakdown");
        assertThat(Said.by("demo", "lane-watch").out()).contains("\"format\": 1");
        Path copies = folder.resolve("trucks");
        assertThat(Said.by("demo", "--copy", copies.toString()).exitCode()).isZero();
        assertThat(copies.resolve("lane-watch.json")).exists();
        assertThat(copies.resolve("scenario.schema.json")).exists();
        assertThat(Said.by("check", copies.resolve("lane-watch.json").toString())
                        .exitCode())
                .isZero();
        assertThat(Said.by("demo", "--copy", copies.toString()).exitCode()).isEqualTo(2);
    }
}

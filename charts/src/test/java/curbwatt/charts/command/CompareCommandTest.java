package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.output.ResultSchema;
import curbwatt.charts.report.Closure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {

    private static final String OFF = "engine off: scene.phases[Closure].engine=off; scene.phases[Closure].engineRpm=";

    @TempDir
    private Path folder;

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private Said variants(String out, String threads) throws IOException {
        return Said.by(
                "compare",
                file("closure.json", Closure.TEXT),
                "--variant",
                OFF,
                "--variant",
                "vehicle.battery.capacityHealthPercent=60",
                "--threads",
                threads,
                "--out",
                folder.resolve(out).toString());
    }

    @Test
    void variantsStandSideBySideWithTheBestMarked() throws IOException {
        Said said = variants("one", "1");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .startsWith("A as it is and C capacityHealthPercent 60 hold what is asked. B engine off: holds ")
                .contains("The inputs differ in 3 places.", "Held", "2 h 20 min (best)", "Report: ");
        String page = Files.readString(folder.resolve("one/report.html"));
        assertThat(page)
                .contains(
                        "What changed in the input",
                        "scene.phases[Closure].engine",
                        "idling",
                        "A as it is",
                        "B engine off")
                .doesNotContain("NaN", "Infinity", "{{");
        ResultSchema.assertFits("compare", folder.resolve("one/result.json"));
        assertThat(Files.readString(folder.resolve("one/comparison.csv"))).startsWith("figure,A,B,C\nheldS,8400,");
    }

    @Test
    void theSameBytesWhateverTheNumberOfThreads() throws IOException {
        variants("one", "1");
        variants("three", "3");
        for (String name : new String[] {
            "report.html", "result.json", "comparison.csv", "charts/trajectories.svg", "charts/trajectories.png"
        }) {
            assertThat(Files.readAllBytes(folder.resolve("one").resolve(name)))
                    .as(name)
                    .isEqualTo(Files.readAllBytes(folder.resolve("three").resolve(name)));
        }
    }

    @Test
    void theProblemsOfAllFilesAreToldAndNothingWritten() throws IOException {
        Path out = folder.resolve("out");
        Said said = Said.by(
                "compare",
                file("a.json", Closure.TEXT.replace("\"title\"", "\"titel\"")),
                file("b.json", Closure.TEXT.replace("\"ratedCurrentA\": 6", "\"ratedCurrentA\": -6")),
                "--out",
                out.toString());
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("a.json", "'titel'", "b.json", "ratedCurrentA");
        assertThat(out).doesNotExist();
    }

    @Test
    void columnsThatCantBeComparedAreRefused() throws IOException {
        String file = file("closure.json", Closure.TEXT);
        assertThat(Said.by("compare", file).err()).contains("there is one column; name two to 6 scenarios");
        assertThat(Said.by("compare", file, file, file, file, file, file, file).err())
                .contains("there are 7 columns");
        assertThat(Said.by("compare", file, file, "--variant", OFF).err()).contains("--variant goes with one scenario");
        assertThat(Said.by("compare", file, "--variant", "nothing").err()).contains("--variant 'nothing'");
    }
}

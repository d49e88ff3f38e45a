package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.output.ResultSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The story of a truck that pulls a wreck off the lane and then watches it. */
class SettingsCommandTest {

    private static final String TRUCK = "src/test/resources/settings-truck.json";

    @TempDir
    private Path folder;

    private Said said(String name, String... more) {
        List<String> args = new ArrayList<>(List.of(
                "settings", TRUCK, "--levels", "11.2,11.6,12.2", "--delays", "5,60", "--threads", "2", "--out"));
        args.add(folder.resolve(name).toString());
        args.addAll(List.of(more));
        return Said.by(args.toArray(String[]::new));
    }

    @Test
    void theAnswerComesFirstWithItsLimitsAndTheSameBytesTwice() throws IOException {
        Said said = said("one");
        assertThat(said.err()).doesNotContain("Exception");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .startsWith("Set 'Equipment cutoff' to 11.")
                .contains("Its room ends where ", "Higher: at 1", "Lower: ", "coarse steps")
                .contains("As the scenario has it, 12.20 V and 5 s, 'Equipment cutoff' would trip after 19 s");
        ResultSchema.assertFits("settings", folder.resolve("one/result.json"));
        said("two");
        for (String name :
                List.of("report.html", "result.json", "settings.csv", "charts/settings.svg", "charts/settings.png")) {
            assertThat(Files.readAllBytes(folder.resolve("one").resolve(name)))
                    .as(name)
                    .isEqualTo(Files.readAllBytes(folder.resolve("two").resolve(name)));
        }
        assertThat(Files.readAllLines(folder.resolve("one/settings.csv"))).hasSize(7);
        assertThat(Files.readString(folder.resolve("one/charts/settings.svg")))
                .contains("Trip level, V", "nuisance trip", "Trip delay");
        assertThat(Files.readString(folder.resolve("one/report.html")))
                .contains("Why not the neighbour?", "Room 1 means")
                .doesNotContain("Infinity", "NaN");
        assertThat(Files.readString(folder.resolve("one/result.json")))
                .contains("\"study\": \"settings\"", "\"coarseRange\"", "\"neighbours\"");
    }

    @Test
    void whereNothingWorksItSaysWhatWould() throws IOException {
        Said said = said("none", "--set", "requirements.hold[0].forMin=126");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .startsWith("No setting of 'Equipment cutoff' does what was asked")
                .contains("% more battery", "% less load", "idling for the last");
        ResultSchema.assertFits("settings", folder.resolve("none/result.json"));
    }

    @Test
    void whatCannotBeSearchedIsRefusedBeforeAnythingIsWritten() {
        assertThat(said("a", "--cutoff", "Guard").err()).contains("--cutoff is 'Guard'; there are 'Equipment cutoff'");
        assertThat(said("b", "--reclose", "soon").err()).contains("by-hand, engine-running, or a voltage");
        assertThat(Said.by("settings", TRUCK, "--levels", "11.6,11.2").err()).contains("they must rise");
        assertThat(Said.by("settings", TRUCK, "--levels", "high").err()).contains("FROM:TO:STEP");
        assertThat(Said.by("settings", TRUCK, "--levels", "high").exitCode()).isEqualTo(2);
        assertThat(folder).isEmptyDirectory();
    }
}

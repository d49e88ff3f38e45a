package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.output.ResultSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A truck with steady lamps, of our own: its runs take no time. */
class RechargeCommandTest {

    private static final String TRUCK = """
            {
              "format": 1, "title": "A truck with steady lamps",
              "vehicle": {
                "name": "Truck",
                "battery": { "part": "battery-agm-80" },
                "alternator": { "part": "alternator-160" },
                "circuits": [{
                  "name": "Lamps",
                  "loads": [
                    { "name": "Lamp", "ratedCurrentA": 15, "behaviour": "constant current", "stages": ["scene"] },
                    { "name": "Engine", "ratedCurrentA": 9, "behaviour": "constant current", "stages": ["engine"] }
                  ]
                }],
                "starter": { "part": "starter-8-cylinder" }
              },
              "scene": {
                "start": { "chargePercent": 95 },
                "phases": [
                  { "name": "Watch", "engine": "off", "durationMin": 60, "airC": 10, "stages": ["scene"] },
                  { "name": "Home", "engine": "driving", "engineRpm": 1900, "durationMin": 20, "airC": 10, "stages": ["engine"] }
                ]
              },
              "requirements": { "restartMarginV": 0.2 }
            }
            """;

    @TempDir
    private Path folder;

    private Said recharged(String out, String... more) throws IOException {
        Path truck = Files.writeString(folder.resolve("truck.json"), TRUCK);
        return Said.by(Stream.concat(
                        Stream.of(
                                "recharge",
                                truck.toString(),
                                "--out",
                                folder.resolve(out).toString()),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void theAnswerTheRuleOfThumbAndTheFilesAreThere() throws IOException {
        Said said = recharged("one");

        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .containsPattern(
                        "^\\d+ min of driving at 1900 /min give back the 15\\.\\d Ah that are missing after the scene;")
                .contains("common practice, no published source", "Lowest idle, within 2 h", "Report: ");
        ResultSchema.assertFits("recharge", folder.resolve("one/result.json"));
        assertThat(Files.readString(folder.resolve("one/result.json")))
                .contains("\"study\": \"recharge\"", "\"leftOutS\": 1200", "\"shifts\": null");
        assertThat(Files.readString(folder.resolve("one/report.html")))
                .contains("Each way to recharge", "What the scene took", "makes carbon monoxide", "local rule")
                .doesNotContain("NaN", "Infinity", "{{");
        assertThat(Files.readString(folder.resolve("one/recharge.csv"))).startsWith("engine,engineRpm,timeS,battery,");
    }

    @Test
    void everyFileIsTheSameBytesTwiceOnAnyNumberOfThreads() throws IOException {
        recharged("one", "--threads", "1", "--scenes", "2", "--drive", "5");
        recharged("two", "--threads", "3", "--scenes", "2", "--drive", "5");

        for (String name : List.of(
                "report.html",
                "result.json",
                "recharge.csv",
                "shifts.csv",
                "charts/recharge.png",
                "charts/idle-speeds.svg",
                "charts/shifts.svg")) {
            assertThat(Files.readAllBytes(folder.resolve("one").resolve(name)))
                    .as(name)
                    .isEqualTo(Files.readAllBytes(folder.resolve("two").resolve(name)));
        }
    }

    @Test
    void scenesThatFollowTooFastDoNotKeepUp() throws IOException {
        Said said = recharged("shifts", "--scenes", "3", "--drive", "5");

        assertThat(said.out())
                .contains("The shift pattern does not keep up: ")
                .contains(" more of driving a day would do.");
        ResultSchema.assertFits("recharge", folder.resolve("shifts/result.json"));
        assertThat(recharged("slow", "--scenes", "1", "--drive", "60").out()).contains("The shift pattern keeps up: ");
    }

    @Test
    void aWeakAlternatorIsSaidToBeTheReason() throws IOException {
        Said said = recharged("weak", "--set", "vehicle.circuits[Lamps].loads[Engine].ratedCurrentA=170");

        assertThat(said.out())
                .startsWith("Not even a day of driving at 1900 /min gives back all of the ")
                .contains("the alternator does not carry the loads", "Nothing comes back in a day, because ")
                .doesNotContain("back in not within");
        ResultSchema.assertFits("recharge", folder.resolve("weak/result.json"));
        assertThat(folder.resolve("weak/charts/idle-speeds.svg")).doesNotExist();
    }

    @Test
    void whatDoesNotFitIsRefusedBeforeAnythingIsWritten() throws IOException {
        assertThat(recharged("never", "--scenes", "20", "--drive", "30").err())
                .contains("The scenes and drives of a day don't fit into it");
        assertThat(recharged("never", "--scenes", "2").err()).contains("--scenes and --drive need each other");
        assertThat(recharged("never", "--stage", "sceen").err()).contains("no load has the stage 'sceen'");
        Said said = recharged("never", "--wanted", "120");
        assertThat(said.err()).contains("wantedFraction is 1.2, allowed is 0.05 to 1.0");
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(folder.resolve("never")).doesNotExist();
    }
}

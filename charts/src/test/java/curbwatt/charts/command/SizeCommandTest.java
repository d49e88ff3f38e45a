package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.output.ResultSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A truck with steady lamps, of our own: its runs take no time. */
class SizeCommandTest {

    private static final String TRUCK = """
            {
              "format": 1, "title": "A truck with steady lamps",
              "vehicle": {
                "name": "Truck",
                "battery": { "part": "battery-agm-80" },
                "circuits": [{
                  "name": "Lamps",
                  "loads": [{
                    "name": "Lamp", "ratedCurrentA": 15, "behaviour": "constant current", "stages": ["scene"]
                  }]
                }],
                "cutoffs": [{ "name": "Cutoff", "tripV": 11.8, "tripDelayS": 30, "disconnects": ["Lamps"] }],
                "starter": { "part": "starter-8-cylinder" }
              },
              "scene": {
                "phases": [{ "name": "Watch", "engine": "off", "durationMin": 120, "airC": 0, "stages": ["scene"] }]
              },
              "requirements": { "hold": [{ "circuits": ["Lamps"], "forMin": 120 }], "restartMarginV": 0.2 },
              "studies": {
                "size": {
                  "draws": 6, "oddsPercent": 80,
                  "labels": [
                    { "part": "battery-agm-80" },
                    { "chemistry": "agm", "c20Ah": 180, "reserveMin": 360, "coldCrankingA": 1250 }
                  ]
                }
              }
            }
            """;

    @TempDir
    private Path folder;

    private Said sized(String out, String... more) throws IOException {
        Path truck = Files.writeString(folder.resolve("truck.json"), TRUCK);
        String[] all = new String[4 + more.length];
        all[0] = "size";
        all[1] = truck.toString();
        all[2] = "--out";
        all[3] = folder.resolve(out).toString();
        System.arraycopy(more, 0, all, 4, more.length);
        return Said.by(all);
    }

    @Test
    void theAnswerTheListAndThePaperMethodAreTold() throws IOException {
        Said said = sized("one");

        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .startsWith(
                        "To hold the scene with 80 % of its capacity left, at 0 °C, in 5 of 6 draws, the battery needs ")
                .contains("the one there has 80 Ah", "'agm 180 Ah 360 min 1250 A'", "Not 'battery-agm-80'")
                .contains("The paper method gives ", "Report: ");
        ResultSchema.assertFits("size", folder.resolve("one/result.json"));
        assertThat(Files.readString(folder.resolve("one/result.json")))
                .contains("\"study\": \"size\"", "\"mustHold\": 5", "\"capacityAtTripAh\"");
        assertThat(Files.readString(folder.resolve("one/report.html"))).contains("Two methods, step by step");
    }

    @Test
    void everyFileIsTheSameBytesTwiceOnAnyNumberOfThreads() throws IOException {
        sized("one", "--threads", "1");
        sized("two", "--threads", "3");

        for (String name :
                new String[] {"report.html", "result.json", "hold.csv", "charts/hold.svg", "charts/hold.png"}) {
            assertThat(Files.readAllBytes(folder.resolve("one").resolve(name)))
                    .as(name)
                    .isEqualTo(Files.readAllBytes(folder.resolve("two").resolve(name)));
        }
    }

    @Test
    void whatNoBatteryHoldsIsSaid() throws IOException {
        Said said = sized("none", "--set", "vehicle.cutoffs[Cutoff].tripV=13.2");

        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .startsWith("No size of the battery holds the scene")
                .contains("by 'Cutoff'");
        ResultSchema.assertFits("size", folder.resolve("none/result.json"));
    }

    @Test
    void oddsOutOfRangeAreRefusedBeforeAnythingIsWritten() throws IOException {
        Said said = sized("never", "--odds", "20");

        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("oddsFraction is 0.2, allowed is 0.5 to 1.0");
        assertThat(folder.resolve("never")).doesNotExist();
    }
}

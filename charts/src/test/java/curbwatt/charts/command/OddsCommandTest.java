package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.output.ResultSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OddsCommandTest {

    /** Steady lights for two hours on a battery that may or may not bear them. */
    private static final String SCENARIO = """
            {
              "format": 1,
              "title": "A stay nobody knows the length of",
              "vehicle": {
                "name": "Truck",
                "battery": { "part": "battery-agm-92" },
                "alternator": { "part": "alternator-160" },
                "circuits": [{ "name": "Lights", "loads": [{ "name": "Bar", "ratedCurrentA": 12 }] }],
                "cutoffs": [{ "name": "Cutoff", "tripV": 12.15, "tripDelayS": 60, "disconnects": ["Lights"] }],
                "starter": { "part": "starter-8-cylinder" }
              },
              "scene": {
                "phases": [{ "name": "Watch", "engine": "off", "durationMin": 120, "airC": 15 }]
              },
              "requirements": { "hold": [{ "circuits": ["Lights"], "forMin": 120 }], "restartMarginV": 0.3 }
            }
            """;

    @TempDir
    private Path folder;

    private String file;

    @BeforeEach
    void write() throws IOException {
        file = Files.writeString(folder.resolve("stay.json"), SCENARIO).toString();
    }

    private Said odds(String out, String... more) {
        String[] all = new String[more.length + 4];
        all[0] = "odds";
        all[1] = file;
        all[2] = "--out";
        all[3] = folder.resolve(out).toString();
        System.arraycopy(more, 0, all, 4, more.length);
        return Said.by(all);
    }

    @Test
    void theAnswerComesFirstWithItsBoundsAndWhatMatters() throws IOException {
        Said said = odds("answer", "--runs", "64");
        assertThat(said.err()).isEmpty();
        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .matches("(?s)Held in \\d+ % of 64 draws \\([\\d.]+ to [\\d.]+ %\\); starts in .* matters most\\.\\R.*")
                .contains("rank correlation", "A cutoff opens on low voltage in", "Nuisance trip", "95 % confidence");
        ResultSchema.assertFits("odds", folder.resolve("answer/result.json"));
    }

    @Test
    void everyFileIsTheSameBytesOnOneThreadAndOnThree() throws IOException {
        odds("one", "--runs", "64", "--indices", "--threads", "1");
        odds("three", "--runs", "64", "--indices", "--threads", "3");
        for (String name : new String[] {
            "report.html",
            "result.json",
            "samples.csv",
            "charts/fan.svg",
            "charts/fan.png",
            "charts/importance.svg",
            "charts/trip-times.svg"
        }) {
            assertThat(Files.readAllBytes(folder.resolve("three").resolve(name)))
                    .as(name)
                    .isEqualTo(Files.readAllBytes(folder.resolve("one").resolve(name)));
        }
        ResultSchema.assertFits("odds", folder.resolve("one/result.json"));
        assertThat(Files.readString(folder.resolve("one/result.json")))
                .contains("\"study\": \"odds\"", "\"firstOrderFraction\"", "\"nuisanceTrip\"", "\"runs\": 448");
        assertThat(Files.readAllLines(folder.resolve("one/samples.csv")))
                .hasSize(65)
                .first()
                .isEqualTo(
                        "draw,batteryHealthFactor,temperatureShiftK,loadFactor,sensorErrorV,sceneLengthFactor,allMet,held,"
                                + "heldFraction,restartMarginV,starts,marginMet,tripS,tripped,nuisance");
        assertThat(Files.readString(folder.resolve("one/report.html")))
                .contains(
                        "Scene held as long as asked",
                        "drawn independently",
                        "The bounds speak of the number of draws");
    }

    @Test
    void whatCanNotBeDrawnIsRefusedBeforeAnythingIsWritten() {
        assertThat(odds("refused", "--runs", "100").err())
                .contains("--runs is 100; a Sobol sequence is even only over a power of two, such as 64 or 128")
                .contains("--sampling seeded");
        assertThat(odds("refused", "--runs", "10").exitCode()).isEqualTo(2);
        assertThat(odds("refused", "--sampling", "random").err()).contains("allowed are sobol and seeded");
        assertThat(odds("refused", "--seed", "-1").err()).contains("--seed is -1");
        String fixed = "{\"distribution\": \"fixed\"}";
        Said nothing = odds(
                "refused",
                "--set",
                "studies={\"odds\": {\"batteryHealth\": F, \"temperature\": F, \"loadCurrent\": F, \"sensor\": F, \"sceneLength\": F}}"
                        .replace("F", fixed));
        assertThat(nothing.exitCode()).isEqualTo(2);
        assertThat(nothing.err()).contains("every input under studies.odds is fixed");
        assertThat(folder.resolve("refused")).doesNotExist();
    }
}

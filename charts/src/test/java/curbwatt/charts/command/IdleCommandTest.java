package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.output.ResultSchema;
import curbwatt.charts.report.Closure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IdleCommandTest {

    @TempDir
    private Path folder;

    private String closure(String text) throws IOException {
        return Files.writeString(folder.resolve("closure.json"), text).toString();
    }

    @Test
    void optionsGoBeforeTheFile() throws IOException {
        Path out = folder.resolve("out");
        Said said = Said.by(
                "idle",
                closure(Closure.TEXT),
                "--out",
                out.toString(),
                "--scenes",
                "30",
                "--fuel-price",
                "2",
                "--currency",
                "crowns");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out()).contains("crowns a year", "Why not", "Report: ");
        ResultSchema.assertFits("idle", out.resolve("result.json"));
        assertThat(Files.readString(out.resolve("result.json")))
                .contains("\"scenesPerYear\": 30", "\"fuelPricePerLitre\": 2", "\"wearPricePerHour\": 2");
    }

    @Test
    void withoutFuelHoursAreCompared() throws IOException {
        Path out = folder.resolve("hours");
        Said said = Said.by(
                "idle",
                closure(Closure.TEXT),
                "--out",
                out.toString(),
                "--set",
                "vehicle.engine=",
                "--set",
                "studies={\"idle\": {\"engineStages\": [\"engine\"]}}");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out()).contains("engine hours a scene");
        ResultSchema.assertFits("idle", out.resolve("result.json"));
    }

    @Test
    void badInputIsRefusedAndNothingWritten() throws IOException {
        Path out = folder.resolve("out");
        String file = closure(Closure.TEXT.replaceFirst("(?s),\\s*\"studies\".*\\}\\s*\\}\\s*\\}\\s*$", "}"));
        assertThat(Said.by("idle", file, "--out", out.toString(), "--hour-price", "2")
                        .err())
                .contains("prices need that of fuel; add --fuel-price");
        assertThat(Said.by("idle", file, "--out", out.toString(), "--scenes", "0")
                        .err())
                .contains("--scenes is 0.0; allowed is 1 to 10000");
        Said drives = Said.by(
                "idle",
                file,
                "--out",
                out.toString(),
                "--set",
                "scene.phases[Closure].engine=parked",
                "--set",
                "scene.phases[Closure].engineRpm=");
        assertThat(drives.exitCode()).isEqualTo(2);
        assertThat(drives.err()).contains("there is no standing to compare");
        assertThat(out).doesNotExist();
    }

    @Test
    void anUnknownEngineStageIsRefusedWithItsPlace() throws IOException {
        Said said = Said.by(
                "idle",
                closure(Closure.TEXT.replace("\"engineStages\": [\"engine\"]", "\"engineStages\": [\"engin\"]")));
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("studies.idle.engineStages[0]", "Did you mean 'engine'?");
    }
}

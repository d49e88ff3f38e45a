package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LabelCommandTest {

    @TempDir
    private Path folder;

    @Test
    void theThreeTestsComeBack() {
        Said said = Said.by("label", "--chemistry", "agm", "--c20", "92", "--reserve", "160", "--cold-cranking", "850");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out()).contains("92.000", "160.000", "850.000", "Peukert exponent", "mOhm", "time constant");
        assertThat(said.out()).doesNotContain("estimated");
    }

    @Test
    void missingFiguresAreMarkedAsEstimates() {
        assertThat(Said.by("label", "--chemistry", "flooded", "--c20", "70").out())
                .contains("(estimated)");
    }

    @Test
    void jsonHoldsCurves() {
        Said said = Said.by("label", "--chemistry", "agm", "--c20", "92", "--currents", "5,50", "--json");
        assertThat(said.out()).contains("\"reserveEstimated\": true", "\"currentA\": 50", "\"points\": [");
    }

    @Test
    void theChartIsWrittenOnRequest() {
        Path out = folder.resolve("label");
        Said said = Said.by("label", "--chemistry", "agm", "--c20", "92", "--out", out.toString());
        assertThat(said.exitCode()).isZero();
        assertThat(out.resolve("charts/discharge.svg")).exists();
        assertThat(out.resolve("label.json")).exists();
    }

    @Test
    void aContradictoryLabelIsRefusedWithWhatIsPossible() {
        Said said = Said.by("label", "--chemistry", "agm", "--c20", "60", "--reserve", "300");
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("reserveMin is 300", "between");
    }

    @Test
    void impossibleOptionsAreRefused() {
        assertThat(Said.by("label", "--chemistry", "gel", "--c20", "60").err()).contains("'gel'", "flooded and agm");
        assertThat(Said.by("label", "--chemistry", "agm", "--c20", "-1").exitCode())
                .isEqualTo(2);
        assertThat(Said.by("label", "--chemistry", "agm", "--c20", "60", "--temperature", "200")
                        .err())
                .contains("--temperature is 200.0 °C; allowed is -40.0 to 60.0 °C");
        assertThat(Said.by("label", "--c20", "60").err()).contains("--chemistry");
    }
}

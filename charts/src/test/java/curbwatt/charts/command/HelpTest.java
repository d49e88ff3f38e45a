package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

class HelpTest {

    private static final Path MANUAL = Path.of("..", "docs", "command-line.md");

    @ParameterizedTest
    @ValueSource(strings = {"run", "days", "check", "wiring", "duty", "parts", "label", "demo"})
    void everyOptionAndArgumentIsExplained(String command) {
        Said said = Said.by(command, "--help");
        assertThat(said.exitCode()).isZero();
        CommandLine.Model.CommandSpec spec =
                new CommandLine(new Main()).getSubcommands().get(command).getCommandSpec();
        for (OptionSpec option : spec.options()) {
            assertThat(said.out()).contains(option.longestName());
        }
        for (ArgSpec arg : spec.args()) {
            assertThat(arg.description()).as(arg.paramLabel()).isNotEmpty();
        }
        assertThat(said.out()).contains("Exit codes:", "Examples:", "  curbwatt " + command);
    }

    @ParameterizedTest
    @ValueSource(strings = {"run", "days", "check", "wiring", "duty", "parts", "label", "demo"})
    void theManualSaysTheSame(String command) throws IOException {
        assertThat(Files.readString(MANUAL)).contains(Said.by(command, "--help").out());
    }

    @Test
    void theManualBeginsAsTheProgramDoes() throws IOException {
        assertThat(Files.readString(MANUAL)).contains(Said.by("--help").out());
    }

    @Test
    void theVersionIsSaid() {
        assertThat(Said.by("--version").out()).startsWith("curbwatt ").contains("result.json version 1");
    }
}

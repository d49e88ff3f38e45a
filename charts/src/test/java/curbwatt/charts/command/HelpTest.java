package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

class HelpTest {

    /** The page; a full build puts what {@code --help} prints into it. */
    private static final Path MANUAL = Path.of("..", "docs", "command-line.md");

    static List<String> commands() {
        return List.copyOf(all().getSubcommands().keySet());
    }

    private static CommandLine all() {
        CommandLine line = new CommandLine(new Main());
        Commands.addTo(line);
        return line;
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyOptionAndArgumentIsExplained(String command) {
        Said said = Said.by(command, "--help");
        assertThat(said.exitCode()).isZero();
        CommandLine.Model.CommandSpec spec = all().getSubcommands().get(command).getCommandSpec();
        for (OptionSpec option : spec.options()) {
            assertThat(said.out()).contains(option.longestName());
        }
        for (ArgSpec arg : spec.args()) {
            assertThat(arg.description()).as(arg.paramLabel()).isNotEmpty();
        }
        assertThat(said.out()).contains("Exit codes:", "Examples:", "  curbwatt " + command);
    }

    /** The help is printed through a formatter, which stumbles over a lone per cent sign and says so on the terminal. */
    @ParameterizedTest
    @MethodSource("commands")
    void everyTextPassesTheFormatter(String command) {
        CommandLine.Model.CommandSpec spec = all().getSubcommands().get(command).getCommandSpec();
        Stream.of(
                        Stream.of(spec.usageMessage().header()),
                        Stream.of(spec.usageMessage().description()),
                        Stream.of(spec.usageMessage().footer()),
                        spec.args().stream().flatMap(arg -> Stream.of(arg.description())))
                .flatMap(texts -> texts)
                .forEach(text ->
                        assertThatCode(() -> String.format(text)).as(text).doesNotThrowAnyException());
    }

    @Test
    void theManualSaysTheSame() throws IOException {
        String manual = Files.readString(MANUAL);
        String same =
                ManualPage.with(manual, "# The command line", Said.by("--help").out());
        for (String command : commands()) {
            same = ManualPage.with(
                    same, ": `" + command + "`", Said.by(command, "--help").out());
        }
        if (System.getProperty("curbwatt.manual.write") != null) {
            Files.writeString(MANUAL, same);
        } else {
            assertThat(manual).isEqualTo(same);
        }
    }

    /** A line that names a command learns of no other; what it prints must not show it. */
    @Test
    void aCommandIsTheSameAloneAndAmongAll() {
        for (String command : commands()) {
            String among = all().getSubcommands().get(command).getUsageMessage(CommandLine.Help.Ansi.OFF);
            assertThat(Said.by(command, "--help").out()).isEqualTo(among);
        }
    }

    @Test
    void theVersionIsSaid() {
        assertThat(Said.by("--version").out()).startsWith("curbwatt ").contains("result.json version 1");
    }
}

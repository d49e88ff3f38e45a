package curbwatt.charts.command;

import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.stock.DemoScenarios;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The scenario that a command works on. */
final class ScenarioArgument {

    private static final String DEMO = DemoScenarios.PREFIX;

    @Parameters(
            paramLabel = "SCENARIO",
            description =
                    "A scenario file, or demo:NAME for one that ships with the program (curbwatt demo lists them).")
    private String scenario;

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            description =
                    "Sets a value of the scenario anew, checked like the file; may stand several times. The path is"
                            + " spelt as in messages, with an entry's place or name in brackets:"
                            + " --set \"vehicle.cutoffs[Equipment cutoff].tripV=11.6\". No value takes a key out.")
    private List<String> settings = List.of();

    /** Opens it; every problem of the file comes out as one exception. */
    ReadyScenario open() {
        List<Setting> set = settings.stream().map(ScenarioArgument::setting).toList();
        return scenario.startsWith(DEMO)
                ? new Scenarios().demo(scenario.substring(DEMO.length()), set)
                : new Scenarios().open(path(), set);
    }

    /** Its name without folder and ending, for the report's folder. */
    String name() {
        if (scenario.startsWith(DEMO)) {
            return scenario.substring(DEMO.length());
        }
        String file = String.valueOf(path().getFileName());
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private static Setting setting(String text) {
        try {
            return Setting.of(text);
        } catch (IllegalArgumentException e) {
            throw new InputException("--set " + e.getMessage());
        }
    }

    private Path path() {
        try {
            return Path.of(scenario);
        } catch (InvalidPathException e) {
            throw new InputException("'" + scenario + "' is not a file name: " + e.getReason());
        }
    }
}

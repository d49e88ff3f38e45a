package curbwatt.charts.command;

import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The scenario that a command works on. */
final class ScenarioArgument {

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
        return named().open(settings.stream().map(ScenarioName::setting).toList())
                .ready();
    }

    /** Its name without folder and ending, for the report's folder. */
    String name() {
        return named().plain();
    }

    private ScenarioName named() {
        return new ScenarioName(scenario);
    }
}

package curbwatt.charts.command;

import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The scenario that a command works on. */
final class ScenarioArgument {

    private static final String DEMO = "demo:";

    @Parameters(
            paramLabel = "SCENARIO",
            description =
                    "A scenario file, or demo:NAME for one that ships with the program (curbwatt demo lists them).")
    private String scenario;

    /** Opens it; every problem of the file comes out as one exception. */
    ReadyScenario open() {
        return scenario.startsWith(DEMO)
                ? new Scenarios().demo(scenario.substring(DEMO.length()))
                : new Scenarios().open(path());
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

    private Path path() {
        try {
            return Path.of(scenario);
        } catch (InvalidPathException e) {
            throw new InputException("'" + scenario + "' is not a file name: " + e.getReason());
        }
    }
}

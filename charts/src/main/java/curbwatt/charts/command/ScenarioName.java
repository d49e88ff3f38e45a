package curbwatt.charts.command;

import curbwatt.scenarios.assemble.ScenarioInput;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.stock.DemoScenarios;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/**
 * A scenario as the command line names it: a file, or {@code demo:NAME}.
 *
 * @param text as the user wrote it
 */
record ScenarioName(String text) {

    private static final String DEMO = DemoScenarios.PREFIX;

    /** Opens it with some values set anew; every problem of the file comes out as one exception. */
    ScenarioInput open(List<Setting> settings) {
        return text.startsWith(DEMO)
                ? new Scenarios().demoInput(text.substring(DEMO.length()), settings)
                : new Scenarios().input(path(), settings);
    }

    /** Its name without folder and ending. */
    String plain() {
        if (text.startsWith(DEMO)) {
            return text.substring(DEMO.length());
        }
        String file = String.valueOf(path().getFileName());
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    /** Reads what was given to {@code --set}. */
    static Setting setting(String text) {
        try {
            return Setting.of(text);
        } catch (IllegalArgumentException e) {
            throw new InputException("--set " + e.getMessage());
        }
    }

    private Path path() {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new InputException("'" + text + "' is not a file name: " + e.getReason());
        }
    }
}

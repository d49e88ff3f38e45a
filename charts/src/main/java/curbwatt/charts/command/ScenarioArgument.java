package curbwatt.charts.command;

import curbwatt.charts.page.FirstScenario;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.json.SourceText;
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

    /** An argument that a command has read by itself. */
    static ScenarioArgument of(String scenario) {
        ScenarioArgument argument = new ScenarioArgument();
        argument.scenario = scenario;
        return argument;
    }

    /** Opens it; every problem of the file comes out as one exception. */
    ReadyScenario open() {
        List<Setting> set = settings.stream().map(ScenarioArgument::setting).toList();
        return isDemo() ? new Scenarios().demo(demo(), set) : new Scenarios().open(path(), set);
    }

    /** Its text as it stands in the file, for the page. */
    FirstScenario first() {
        return isDemo()
                ? new FirstScenario(scenario, DemoScenarios.text(demo()))
                : new FirstScenario(
                        String.valueOf(path().getFileName()),
                        SourceText.of(path(), "Check the name and the folder.").text());
    }

    /** Its name without folder and ending, for the report's folder. */
    String name() {
        if (isDemo()) {
            return demo();
        }
        String file = String.valueOf(path().getFileName());
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private boolean isDemo() {
        return scenario.startsWith(DEMO);
    }

    private String demo() {
        return scenario.substring(DEMO.length());
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

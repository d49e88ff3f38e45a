package curbwatt.charts.command;

import curbwatt.charts.output.ReportFolder;
import curbwatt.charts.report.ReportFiles;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.ScenarioRunner;
import curbwatt.engine.simulation.Fidelity;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs a scenario and writes its report. */
@Command(
        name = "run",
        header = "Run a scenario, say the verdict, and write a report.",
        description = {
            "Simulates the vehicle through the scene, every flash counted, holds the outcome against the scenario's"
                    + " requirements, prints the verdict and writes a folder:",
            "",
            "  report.html   the answer with charts and tables; opens offline, prints well",
            "  charts/       each chart as SVG and PNG",
            "  result.json   every figure, for other tools (docs/result.md)",
            "  trace.csv     voltage, current and charge along the scene",
            "",
            "The folder appears whole or not at all. One that is there already is replaced if it is empty or holds a report"
                    + " and nothing else; any other is left alone and the command ends with 2. The same scenario gives the same"
                    + " bytes."
        },
        footer = {
            "Examples:",
            "  curbwatt run demo:lane-watch",
            "  curbwatt run trucks/truck-4.json --out reports/truck-4",
            "  curbwatt run night.json --trace-spacing 60 --quiet"
        })
final class RunCommand implements Callable<Integer> {

    private static final double LEAST_SPACING_S = 0.1;
    private static final double MOST_SPACING_S = 3600;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the report. Default: curbwatt-report/ and the scenario's name.")
    private Path out;

    @Option(
            names = "--trace-spacing",
            paramLabel = "S",
            description =
                    "Time between lines of the trace, in seconds, 0.1 to 3600; lows and highs between lines are kept."
                            + " Default: what the scenario says, else 10.")
    private Double traceSpacingS;

    @Option(
            names = "--resolved",
            description =
                    "Follow every edge of every flash from start to end. Without it the run goes in long steps over many"
                            + " flashes, and edge by edge near every event: the same within a second and 2 mV, and far faster.")
    private boolean resolved;

    @Option(names = "--quiet", description = "Print no progress, and of the verdict the first line alone.")
    private boolean quiet;

    @Override
    public Integer call() {
        ReportFiles.prepare();
        ReadyScenario ready = spaced(scenario.open());
        Path path = out == null ? Path.of("curbwatt-report").resolve(scenario.name()) : out;
        ReportFolder folder = ReportFolder.ofReport(path);
        folder.check();

        PrintWriter err = spec.commandLine().getErr();
        if (!quiet) {
            ready.warnings().forEach(warning -> ProblemPrinter.print(warning, err));
        }
        ProgressLine progress = new ProgressLine(err, !quiet);
        RunStory story =
                new ScenarioRunner(ready, resolved ? Fidelity.RESOLVED : Fidelity.ENVELOPE).run(progress::show);
        progress.clear();
        folder.write(ReportFiles.of(story));

        VerdictPrinter.print(story, path, quiet, spec.commandLine().getOut());
        return ExitCode.DONE.number();
    }

    private ReadyScenario spaced(ReadyScenario ready) {
        if (traceSpacingS == null) {
            return ready;
        }
        if (!(traceSpacingS >= LEAST_SPACING_S && traceSpacingS <= MOST_SPACING_S)) {
            throw new InputException("--trace-spacing is " + traceSpacingS + " s; allowed is 0.1 to 3600 s");
        }
        return ready.withTraceSpacing(traceSpacingS);
    }
}

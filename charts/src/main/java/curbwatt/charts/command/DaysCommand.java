package curbwatt.charts.command;

import curbwatt.charts.output.ReportFolder;
import curbwatt.charts.output.RosterJson;
import curbwatt.charts.report.DaysFiles;
import curbwatt.charts.run.RosterStory;
import curbwatt.charts.wording.RosterText;
import curbwatt.engine.scene.Roster;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs a scenario's roster for days to years. */
@Command(
        name = "days",
        header = "Run a scenario's roster for days to years: does the battery keep up?",
        description = {
            "Repeats the shift pattern that the scenario's scene.roster describes, and says whether the batteries keep up or"
                    + " creep down, on which day the engine would not start, how much charge went through, and how long the"
                    + " batteries would last by cycling alone. Flashing and duty run as their mean current; a year takes"
                    + " seconds. Nothing ages within the run.",
            "",
            "With --out it writes a folder with report.html (the answer with charts and tables), days.json (every figure, day"
                    + " by day) and charts/."
        },
        footer = {
            "Examples:",
            "  curbwatt days demo:winter-shifts",
            "  curbwatt days trucks/truck-4.json --days 365 --out reports/truck-4-year",
            "  curbwatt days trucks/truck-4.json --json"
        })
final class DaysCommand implements Callable<Integer> {

    private static final int MOST_DAYS = 3660;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--days",
            paramLabel = "N",
            description = "How many days, 1 to 3660. Default: what the roster says.")
    private Integer days;

    @Option(names = "--json", description = "Print everything as JSON instead, day by day (docs/result.md).")
    private boolean json;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Also write a report, days.json and the charts (SVG and PNG) into this folder.")
    private Path out;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        Roster roster = roster(ready);
        if (out != null) {
            ReportFolder.ofDays(out).check();
        }
        PrintWriter err = spec.commandLine().getErr();
        ready.warnings().forEach(warning -> ProblemPrinter.print(warning, err));
        ProgressLine progress = new ProgressLine(err, !json);
        RosterStory story = RosterStory.run(ready, roster, progress::show);
        progress.clear();
        if (out != null) {
            ReportFolder.ofDays(out).write(DaysFiles.of(story));
        }
        PrintWriter print = spec.commandLine().getOut();
        if (json) {
            print.print(RosterJson.of(story));
            return ExitCode.DONE.number();
        }
        RosterText text = new RosterText(story);
        print.println(text.sentence());
        print.println(text.subject() + ".");
        print.println();
        Columns.print(2, text.figures(), print);
        print.println();
        print.println(RosterText.CAUTION);
        if (out != null) {
            print.println();
            print.println("Written: " + out);
        }
        return ExitCode.DONE.number();
    }

    private Roster roster(ReadyScenario ready) {
        Roster roster = ready.roster()
                .orElseThrow(() -> new InputException(ready.source()
                        + " has no scene.roster: nothing says what the vehicle does from day to day"
                        + " (docs/scenario-files.md)"));
        if (days == null) {
            return roster;
        }
        if (days < 1 || days > MOST_DAYS) {
            throw new InputException("--days is " + days + "; allowed is 1 to " + MOST_DAYS);
        }
        return new Roster(roster.name(), roster.start(), roster.pattern(), days);
    }
}

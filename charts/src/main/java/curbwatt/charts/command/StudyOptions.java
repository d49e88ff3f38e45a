package curbwatt.charts.command;

import curbwatt.charts.output.ReportFolder;
import curbwatt.charts.report.StudyReport;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.problem.Problem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** What every study's command offers, and the way it goes: look at the folder, ask, write, print the answer. */
final class StudyOptions {

    private static final int MOST_THREADS = 256;

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the report. Default: curbwatt-report/, the scenario's name and the study's.")
    private Path out;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "How many runs at once, 1 to 256; the answer does not depend on it. Default: one for each"
                    + " processor.")
    private Integer threads;

    @Option(names = "--quiet", description = "Print no progress, and of the answer the first line alone.")
    private boolean quiet;

    /**
     * What a study hands back.
     *
     * @param report the report
     * @param lines a table for the terminal, its heads first, instead of the key figures; empty: the key figures
     */
    record Outcome(StudyReport report, List<List<String>> lines) {}

    /**
     * Carries a study out.
     *
     * @param ready the scenario
     * @param name the scenario's name, for the folder
     * @param study makes the report
     */
    int carryOut(ReadyScenario ready, String name, BiFunction<RunPool, StudyWatch, StudyReport> study) {
        return carryOut(ready.warnings(), name, (pool, watch) -> new Outcome(study.apply(pool, watch), List.of()));
    }

    /** Carries out a study of several scenarios, given the warnings of all. */
    int carryOut(List<Problem> warnings, String name, BiFunction<RunPool, StudyWatch, Outcome> study) {
        Path path = out == null ? Path.of("curbwatt-report").resolve(name + "-" + spec.name()) : out;
        ReportFolder folder = ReportFolder.ofReport(path);
        folder.check();
        PrintWriter err = spec.commandLine().getErr();
        if (!quiet) {
            warnings.forEach(warning -> ProblemPrinter.print(warning, err));
        }
        ProgressLine progress = ProgressLine.ofCases(err, !quiet);
        Outcome outcome = study.apply(pool(), (done, all) -> progress.show((double) done / all));
        progress.clear();
        folder.write(outcome.report().files());
        print(outcome, path);
        return ExitCode.DONE.number();
    }

    private void print(Outcome outcome, Path path) {
        PrintWriter print = spec.commandLine().getOut();
        print.println(outcome.report().headline());
        if (!quiet) {
            outcome.report().reasons().forEach(reason -> print.println("  " + reason));
            print.println();
            if (outcome.lines().isEmpty()) {
                Columns.figures(outcome.report().keyFigures(), print);
            } else {
                Columns.print(1, outcome.lines(), print);
            }
            print.println();
            print.println("Report: " + path.resolve("report.html"));
        }
    }

    private RunPool pool() {
        if (threads == null) {
            return new RunPool(Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
        }
        if (threads < 1 || threads > MOST_THREADS) {
            throw new InputException("--threads is " + threads + "; allowed is 1 to " + MOST_THREADS);
        }
        return new RunPool(threads);
    }
}

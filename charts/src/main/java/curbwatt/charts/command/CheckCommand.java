package curbwatt.charts.command;

import curbwatt.charts.output.BudgetJson;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.budget.LoadBudget;
import curbwatt.engine.scene.Phase;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reads a scenario, says what is wrong with it, and lists its loads. */
@Command(
        name = "check",
        header = "Check a scenario file, and list its loads and their budget.",
        description = {
            "Reads the file as 'run' would and prints all that is wrong with it, each with line and column, what was found,"
                    + " what is allowed and the nearest name. If nothing is wrong, lists for each phase what every load draws"
                    + " on average and at most, what the hot alternator gives at the phase's lowest engine speed, and from"
                    + " which engine speed on it carries the load. Currents are those at 13.5 V with the engine running and"
                    + " 12.2 V with it off, feed drops left out. Simulates nothing, writes nothing."
        },
        footer = {"Examples:", "  curbwatt check trucks/truck-4.json", "  curbwatt check demo:night-closure --json"})
final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ScenarioArgument scenario;

    @Option(names = "--json", description = "Print the budget as JSON instead (docs/result.md).")
    private boolean json;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        ready.warnings().forEach(warning -> ProblemPrinter.print(warning, err));
        List<Phase> phases = ready.scene().phases();
        List<LoadBudget> budgets = phases.stream()
                .map(phase -> LoadBudget.of(ready.vehicle(), phase))
                .toList();
        if (json) {
            out.print(BudgetJson.of(budgets));
            return ExitCode.DONE.number();
        }
        out.println(ready.source() + ": no error, "
                + PlainText.count(ready.warnings().size(), "warning") + ".");
        out.println(ready.title() + ", " + ready.vehicle().name());
        for (int i = 0; i < phases.size(); i++) {
            out.println();
            print(phases.get(i), budgets.get(i), out);
        }
        return ExitCode.DONE.number();
    }

    private static void print(Phase phase, LoadBudget budget, PrintWriter out) {
        out.println(PlainText.quoted(phase.name()) + ": "
                + phase.mode().name().toLowerCase(Locale.ROOT) + ", " + PlainText.time(phase.durationS()) + ", at "
                + PlainText.number(budget.voltageV(), 1) + " V");
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("circuit", "load", "on", "mean A", "peak A"));
        for (LoadBudget.Line line : budget.lines()) {
            lines.add(List.of(
                    line.circuit(),
                    line.load(),
                    line.on() ? PlainText.number(100 * line.onFraction(), 0) + " %" : "off",
                    PlainText.number(line.meanA(), 2),
                    PlainText.number(line.peakA(), 2)));
        }
        lines.add(List.of("all", "", "", PlainText.number(budget.meanA(), 2), PlainText.number(budget.peakA(), 2)));
        Columns.print(2, lines, out);
        if (budget.alternatorA().isPresent()) {
            double alternatorA = budget.alternatorA().getAsDouble();
            double spareA = alternatorA - budget.meanA();
            out.println("  Alternator, hot, at "
                    + PlainText.number(phase.speed().lowestRpm(), 0) + " rpm: "
                    + PlainText.amperes(alternatorA) + ", " + PlainText.amperes(Math.abs(spareA))
                    + (spareA >= 0 ? " more" : " less") + " than the mean load; it carries that "
                    + (budget.balanceRpm().isPresent()
                            ? "from "
                                    + PlainText.number(
                                            Math.ceil(budget.balanceRpm().getAsDouble()), 0) + " rpm up."
                            : "at no engine speed."));
        }
    }
}

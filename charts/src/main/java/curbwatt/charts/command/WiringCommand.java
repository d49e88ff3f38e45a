package curbwatt.charts.command;

import curbwatt.charts.run.CircuitWiring;
import curbwatt.charts.wording.WiringText;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says what the feeds of a scenario's vehicle drop, and what rules say of them. */
@Command(
        name = "wiring",
        header = "Say what each feed drops, and what rules say of wire and fuse.",
        description = {
            "For each circuit: the resistance of its feed, the largest mean current of a phase and the largest with everything"
                    + " lit, the drop at both, and whether it lies within 3 %% or 10 %% of 12 V; the largest drop is marked."
                    + " Then what a cutoff that senses behind a feed reads too little. Where wire and fuse are known, each"
                    + " rule with figure, limit and source. It advises, it does not certify. Simulates nothing, writes"
                    + " nothing."
        },
        footer = {"Examples:", "  curbwatt wiring trucks/truck-4.json", "  curbwatt wiring demo:lane-watch"})
final class WiringCommand implements Callable<Integer> {

    private static final int FIRST_NUMBER = 2;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ScenarioArgument scenario;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        PrintWriter out = spec.commandLine().getOut();
        WiringText text =
                new WiringText(CircuitWiring.of(ready), ready.vehicle().cutoffs());
        out.println(ready.title() + ", " + ready.vehicle().name());
        out.println();
        print(WiringText.DROP_HEADS, text.drops(), FIRST_NUMBER, out);
        out.println();
        out.println(WiringText.DROP_SOURCE);
        text.senseDrops().forEach(out::println);
        List<List<String>> findings = text.findings();
        out.println();
        if (findings.isEmpty()) {
            out.println(WiringText.UNKNOWN);
        } else {
            print(WiringText.FINDING_HEADS, findings, WiringText.FINDING_HEADS.size(), out);
            text.remedies().forEach(out::println);
        }
        out.println(WiringText.CAUTION);
        return ExitCode.DONE.number();
    }

    private static void print(List<String> heads, List<List<String>> lines, int firstNumber, PrintWriter out) {
        List<List<String>> all = new ArrayList<>();
        all.add(heads.stream().map(head -> head.replace("#", "")).toList());
        all.addAll(lines);
        Columns.print(firstNumber, all, out);
    }
}

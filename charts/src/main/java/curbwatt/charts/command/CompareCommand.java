package curbwatt.charts.command;

import curbwatt.charts.report.ComparisonReport;
import curbwatt.charts.run.Comparison;
import curbwatt.charts.run.Comparison.Entry;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays scenarios, or variants of one, side by side. */
@Command(
        name = "compare",
        header = "Lay two to six scenarios, or variants of one, side by side.",
        description = {
            "Runs them all, draws voltage and charge over each other, sets the figures side by side with the best marked, and"
                    + " lists what differs in the input. Either name two to six scenarios, or one with a --variant for"
                    + " each further column; the scenario as it is then comes first."
        },
        footer = {
            "Examples:",
            "  curbwatt compare demo:lane-watch demo:shed-in-steps",
            "  curbwatt compare truck-4.json truck-7.json --set scene.start.chargePercent=80",
            "  curbwatt compare demo:lane-watch --variant \"patient: vehicle.cutoffs[0].tripDelayS=120\"",
            "      --variant \"older: vehicle.battery.capacityHealthPercent=70; scene.start.chargePercent=90\""
        })
final class CompareCommand implements Callable<Integer> {

    @Parameters(
            arity = "1..*",
            paramLabel = "SCENARIO",
            description = "Scenario files, or demo:NAME for those that ship with the program.")
    private List<String> scenarios;

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            description = "Sets a value anew in all of them, as everywhere; may stand several times.")
    private List<String> settings = List.of();

    @Option(
            names = "--variant",
            paramLabel = "VARIANT",
            description =
                    "A further column: the one scenario with values set anew, written NAME: PATH=VALUE; PATH=VALUE."
                            + " The name and its colon may be left out. May stand one to five times.")
    private List<String> variants = List.of();

    @Mixin
    private StudyOptions study;

    /** A column before it is opened. */
    private record Wanted(String name, ScenarioName scenario, List<Setting> settings) {}

    @Override
    public Integer call() {
        List<Wanted> wanted = wanted();
        if (wanted.size() < 2 || wanted.size() > Comparison.MOST) {
            throw new InputException(
                    (wanted.size() < 2 ? "there is one column" : "there are " + wanted.size() + " columns")
                            + "; name two to " + Comparison.MOST
                            + " scenarios, or one scenario with a --variant for each further column");
        }
        List<Entry> entries = opened(wanted);
        return study.carryOut(warnings(entries), folder(wanted), (pool, watch) -> {
            ComparisonReport report = new ComparisonReport(Comparison.run(entries, pool, watch));
            return new StudyOptions.Outcome(report.report(), report.lines());
        });
    }

    private List<Wanted> wanted() {
        List<Setting> all = settings.stream().map(ScenarioName::setting).toList();
        List<ScenarioName> names = scenarios.stream().map(ScenarioName::new).toList();
        if (variants.isEmpty()) {
            return names.stream()
                    .map(name -> new Wanted(name.plain(), name, all))
                    .toList();
        }
        if (names.size() > 1) {
            throw new InputException("--variant goes with one scenario, and " + names.size()
                    + " are named; leave one, or write" + " the variants as files");
        }
        List<Wanted> wanted = new ArrayList<>();
        wanted.add(new Wanted("as it is", names.get(0), all));
        for (String text : variants) {
            VariantText variant = VariantText.of(text);
            List<Setting> both = new ArrayList<>(all);
            both.addAll(variant.settings());
            wanted.add(new Wanted(variant.name(), names.get(0), both));
        }
        return wanted;
    }

    /** Opens all, so that the problems of all are told at once. */
    private static List<Entry> opened(List<Wanted> wanted) {
        List<Entry> entries = new ArrayList<>();
        LinkedHashSet<Problem> problems = new LinkedHashSet<>();
        for (Wanted column : wanted) {
            try {
                entries.add(new Entry(column.name(), column.scenario().open(column.settings())));
            } catch (ScenarioException e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new ScenarioException(List.copyOf(problems));
        }
        return entries;
    }

    private static List<Problem> warnings(List<Entry> entries) {
        return entries.stream()
                .flatMap(entry -> entry.input().ready().warnings().stream())
                .distinct()
                .toList();
    }

    private static String folder(List<Wanted> wanted) {
        return wanted.stream()
                .map(column -> column.scenario().plain())
                .distinct()
                .collect(Collectors.joining("-"));
    }
}

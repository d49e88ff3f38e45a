package curbwatt.charts.command;

import curbwatt.charts.report.SizeReport;
import curbwatt.charts.run.SizeStory;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.study.size.Candidate;
import curbwatt.engine.study.size.Seat;
import curbwatt.engine.study.size.SizePlan;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Sizes the battery that carries the equipment. */
@Command(
        name = "size",
        header = "Find the smallest battery that holds the scene, cold and old.",
        description = {
            "Sizes the auxiliary battery, or the only one: the smallest that meets everything asked at an age, a temperature"
                    + " and odds, of any size and out of a list (studies.size.labels, else the catalogue). Beside it the"
                    + " paper method of IEEE 485 on the same duty, and why the two differ. Writes a report."
        },
        footer = {
            "Examples:",
            "  curbwatt size demo:two-batteries",
            "  curbwatt size trucks/truck-7.json --health 80 --temperature -10 --odds 99"
        })
final class SizeCommand implements Callable<Integer> {

    private static final double PERCENT = 100;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--health",
            paramLabel = "PERCENT",
            description =
                    "Capacity at which it must still do, of that when new. Default: 80, or the scenario's if lower.")
    private Double health;

    @Option(
            names = "--temperature",
            paramLabel = "C",
            description = "Temperature of the batteries at the start, in °C. Default: the scenario's.")
    private Double temperature;

    @Option(
            names = "--odds",
            paramLabel = "PERCENT",
            description = "Share of the draws that must hold, 50 to 100. Default: 95.")
    private Double odds;

    @Option(names = "--draws", paramLabel = "N", description = "How many draws, 1 to 1000. Default: 40.")
    private Integer draws;

    @Mixin
    private StudyOptions options;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        SizePlan plan = plan(ready.studies().size());
        return options.carryOut(
                ready,
                scenario.name(),
                (pool, watch) -> SizeReport.of(SizeStory.run(ready, plan, candidates(ready), pool, watch)));
    }

    private SizePlan plan(SizePlan file) {
        try {
            return new SizePlan(
                    health == null ? file.capacityHealthFraction() : OptionalDouble.of(health / PERCENT),
                    file.resistanceGrowthFactor(),
                    temperature == null ? file.batteryC() : OptionalDouble.of(temperature),
                    odds == null ? file.oddsFraction() : odds / PERCENT,
                    draws == null ? file.draws() : draws,
                    file.spread(),
                    file.marginFactor());
        } catch (IllegalArgumentException e) {
            throw new InputException("--health, --temperature, --odds, --draws: " + e.getMessage());
        }
    }

    private static List<Candidate> candidates(ReadyScenario ready) {
        if (!ready.studies().labels().isEmpty()) {
            return ready.studies().labels();
        }
        Chemistry chemistry = Seat.of(ready.vehicle())
                .in(ready.vehicle())
                .battery()
                .parameters()
                .chemistry();
        return new Scenarios().batteries(chemistry);
    }
}

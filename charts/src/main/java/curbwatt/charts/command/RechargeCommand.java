package curbwatt.charts.command;

import curbwatt.charts.report.RechargeReport;
import curbwatt.charts.run.RechargeStory;
import curbwatt.engine.study.recharge.CallPattern;
import curbwatt.engine.study.recharge.RechargePlan;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How long of driving or idling gives the scene's charge back. */
@Command(
        name = "recharge",
        header = "How long of driving, or of idling, gives the scene's charge back; do the shifts keep up?",
        description = {
            "Runs the scene without the drives it ends with, then a day of driving and of idling at several speeds, and says"
                    + " when the charge is back, or why it never is; the lowest idle that is enough at all and between two"
                    + " calls; and whether the scenario's roster, or scenes a day with drives between, keeps up. Writes a"
                    + " report."
        },
        footer = {
            "Examples:",
            "  curbwatt recharge demo:night-closure",
            "  curbwatt recharge demo:lane-watch --scenes 3 --drive 25",
            "  curbwatt recharge demo:winter-shifts --wanted 90"
        })
final class RechargeCommand implements Callable<Integer> {

    private static final double PERCENT = 100;
    private static final double MINUTE_S = 60;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--wanted",
            paramLabel = "PERCENT",
            description =
                    "Charge that each battery is to have again. Default: that at the scene's start, and 80 before the"
                            + " scenes of a shift pattern.")
    private Double wanted;

    @Option(
            names = "--between",
            paramLabel = "MIN",
            description = "Time between two calls, in minutes, 1 to 1440. Default: 120.")
    private Double between;

    @Option(
            names = "--driving-rpm",
            paramLabel = "RPM",
            description =
                    "Engine speed on the road, 500 to 6000. Default: the mean of the scene's last drive, else 1800.")
    private Double drivingRpm;

    @Option(
            names = "--idle-rpm",
            paramLabel = "RPM",
            description =
                    "An idle speed to try, 500 to 2000; may stand several times. Default: the scene's own, and faster.")
    private List<Double> idleRpms;

    @Option(
            names = "--stage",
            paramLabel = "STAGE",
            description =
                    "A stage that stays on while recharging; may stand several times. Default: those of the scene's last"
                            + " drive.")
    private List<String> stages;

    @Option(
            names = "--scenes",
            paramLabel = "N",
            description = "How many such scenes a day has, 1 to 48, where there is no roster. Needs --drive.")
    private Integer scenes;

    @Option(
            names = "--drive",
            paramLabel = "MIN",
            description = "Drive after each of them, in minutes, 1 to 1440. Needs --scenes.")
    private Double drive;

    @Mixin
    private StudyOptions options;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        RechargePlan plan = plan(ready.studies().recharge());
        if (ready.roster().isPresent() && scenes != null) {
            throw new InputException(
                    "--scenes and --drive have no place here: " + ready.source() + " has a roster; take them out");
        }
        unknownStages(ready, plan);
        fitting(ready, plan);
        return options.carryOut(
                ready,
                scenario.name(),
                (pool, watch) -> RechargeReport.of(RechargeStory.run(ready, plan, pool, watch)));
    }

    private RechargePlan plan(RechargePlan file) {
        if ((scenes == null) != (drive == null)) {
            throw new InputException("--scenes and --drive need each other; give both");
        }
        try {
            return new RechargePlan(
                    wanted == null ? file.wantedFraction() : OptionalDouble.of(wanted / PERCENT),
                    stages == null ? file.stages() : Optional.of(Set.copyOf(stages)),
                    drivingRpm == null ? file.drivingRpm() : OptionalDouble.of(drivingRpm),
                    idleRpms == null
                            ? file.idleRpms()
                            : idleRpms.stream().sorted().distinct().toList(),
                    between == null ? file.betweenCallsS() : between * MINUTE_S,
                    scenes == null ? file.pattern() : Optional.of(new CallPattern(scenes, drive * MINUTE_S)));
        } catch (IllegalArgumentException e) {
            throw new InputException(
                    "--wanted, --between, --driving-rpm, --idle-rpm, --scenes, --drive: " + e.getMessage());
        }
    }

    private static void unknownStages(ReadyScenario ready, RechargePlan plan) {
        Set<String> known = new TreeSet<>();
        ready.vehicle().loads().forEach(load -> known.addAll(load.stages()));
        plan.stages().orElse(Set.of()).stream()
                .filter(stage -> !known.contains(stage))
                .sorted()
                .findFirst()
                .ifPresent(stage -> {
                    throw new InputException("--stage: no load has the stage '" + stage + "'; there are " + known);
                });
    }

    private static void fitting(ReadyScenario ready, RechargePlan plan) {
        try {
            RechargeStory.study(ready, plan).checkPattern();
        } catch (IllegalArgumentException e) {
            throw new InputException("The scenes and drives of a day don't fit into it: " + e.getMessage()
                    + ". Take fewer scenes (--scenes, studies.recharge.scenesPerDay) or shorter drives.");
        }
    }
}

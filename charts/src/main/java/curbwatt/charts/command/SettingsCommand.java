package curbwatt.charts.command;

import curbwatt.charts.report.SettingsReport;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.settings.CellListener;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.engine.study.settings.SettingsStudy;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Searches the settings of a cutoff. */
@Command(
        name = "settings",
        header = "Find the trip level and delay of a cutoff that leave the most room.",
        description = {
            "Tries every pair of trip level and delay by a run of its own, and shows in a map why each fails or how much room"
                    + " it has. Recommends the setting that stands the largest errors of sensor and timer, age, cold and"
                    + " load, and says what limits it on each side. Where none works, it says how much more battery, less"
                    + " load or idling would make one work."
        },
        footer = {
            "Examples:",
            "  curbwatt settings demo:lane-watch",
            "  curbwatt settings trucks/truck-4.json --cutoff \"Equipment cutoff\" --levels 11.0:12.4:0.1",
            "  curbwatt settings trucks/truck-4.json --delays 10,30,60,120 --out reports/truck-4-settings"
        })
final class SettingsCommand implements Callable<Integer> {

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--cutoff",
            paramLabel = "NAME",
            description = "The cutoff to set. Default: what the scenario says, else the only one that the vehicle has.")
    private String cutoff;

    @Option(
            names = "--levels",
            paramLabel = "V",
            description = "Trip levels to try, in volts: a list such as 11.2,11.4,11.6, or FROM:TO:STEP. Default: what"
                    + " the scenario says, else 10.6:12.6:0.05.")
    private String levels;

    @Option(
            names = "--delays",
            paramLabel = "S",
            description =
                    "Delays to try, in seconds, in the same way. Default: what the scenario says, else 21 from 1 s to"
                            + " 1800 s, each about half as long again.")
    private String delays;

    @Option(
            names = "--reclose",
            paramLabel = "RULE",
            description = "A rule of closing to try: by-hand, engine-running, or a voltage such as 13.2 above which it"
                    + " closes; may stand several times. Default: the one that the cutoff has.")
    private List<String> recloses = List.of();

    @Mixin
    private StudyOptions options;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        if (ready.requirements().isEmpty()) {
            throw new InputException(ready.source()
                    + " has no requirements: without any, every setting would do (docs/scenario-files.md)");
        }
        SettingsStudy study = new SettingsStudy(
                new Question(Simulation.of(ready.vehicle(), ready.scene()), ready.requirements()), plan(ready));
        return options.carryOut(
                ready,
                scenario.name(),
                (pool, watch) -> new SettingsReport(ready, study.run(pool, watch, CellListener.none())).report());
    }

    private SettingsPlan plan(ReadyScenario ready) {
        SettingsPlan said = ready.studies().settings();
        Optional<String> name = Optional.ofNullable(cutoff).or(said::cutoff);
        List<String> names =
                ready.vehicle().cutoffs().stream().map(LowVoltageCutoff::name).toList();
        if (names.isEmpty()) {
            throw new InputException(ready.source() + " has no cutoff in vehicle.cutoffs: there is nothing to set");
        }
        if (name.isEmpty() && names.size() > 1) {
            throw new InputException(
                    "The vehicle has several cutoffs: name one with --cutoff. There are " + PlainText.names(names));
        }
        if (name.isPresent() && !names.contains(name.get())) {
            throw new InputException("--cutoff is '" + name.get() + "'; there are " + PlainText.names(names));
        }
        try {
            return new SettingsPlan(
                    name,
                    levels == null ? said.tripLevelsV() : NumberList.of("--levels", levels),
                    delays == null ? said.tripDelaysS() : NumberList.of("--delays", delays),
                    recloses.isEmpty()
                            ? said.recloses()
                            : recloses.stream().map(SettingsCommand::rule).toList(),
                    said.spread());
        } catch (IllegalArgumentException e) {
            throw new InputException("--levels or --delays: " + e.getMessage());
        }
    }

    private static RecloseRule rule(String text) {
        if (text.equals("by-hand")) {
            return new RecloseRule.ByHand();
        }
        if (text.equals("engine-running")) {
            return new RecloseRule.EngineRunning();
        }
        try {
            return new RecloseRule.AboveVoltage(Double.parseDouble(text), 0);
        } catch (IllegalArgumentException e) {
            throw new InputException(
                    "--reclose is '" + text + "'; write by-hand, engine-running, or a voltage from 8 to 16");
        }
    }
}

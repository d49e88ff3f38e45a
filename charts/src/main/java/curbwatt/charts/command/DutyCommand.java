package curbwatt.charts.command;

import curbwatt.charts.run.DutyRunner;
import curbwatt.charts.wording.DutyText;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.duty.DutyOutcome;
import curbwatt.engine.duty.DutyTest;
import curbwatt.engine.duty.IdleBalanceTest;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.io.PrintWriter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs the standard duty tests on a scenario's vehicle. */
@Command(
        name = "duty",
        header = "Predict what standard duty tests would say of a vehicle.",
        description = {
            "Takes the vehicle of a scenario, not its scene, through four tests: the reserve test (engine off for ten minutes,"
                    + " then a restart), two idle balance tests (no discharge with 93 °C under the hood: a fire apparatus"
                    + " at idle under its minimum load, an ambulance at high idle under its maximum load) and the"
                    + " low-voltage alarm test (an alarm within 140 s of 11.70 V, then a restart). Prints each figure beside"
                    + " its limit and the limit's source. It is a prediction, not a certification. Writes nothing."
        },
        footer = {
            "Examples:",
            "  curbwatt duty demo:lane-watch",
            "  curbwatt duty trucks/truck-4.json --minimum Radios --minimum \"Roof bar\" --idle-rpm 650"
        })
final class DutyCommand implements Callable<Integer> {

    private static final double USUAL_IDLE_RPM = 700;
    private static final double USUAL_AIR_C = 25;
    private static final int FIRST_NUMBER = 4;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--minimum",
            paramLabel = "CIRCUIT",
            description = "A circuit of the minimum continuous load; may stand several times. Default: every circuit.")
    private List<String> minimum;

    @Option(
            names = "--idle-rpm",
            paramLabel = "RPM",
            description =
                    "Engine speed at idle, 300 to 3000 per minute. Default: the lowest at which the scene idles, else"
                            + " 700.")
    private Double idleRpm;

    @Option(
            names = "--high-idle-rpm",
            paramLabel = "RPM",
            description = "Engine speed of the ambulance test, at most the maker's high idle, 300 to 3000 per minute."
                    + " Default: the idle control's, else as --idle-rpm.")
    private Double highIdleRpm;

    @Option(
            names = "--medical-load",
            paramLabel = "A",
            description =
                    "Medical load that the ambulance test adds to every circuit, in amperes, 0 to 100. Default: 20,"
                            + " the specification's; 0 if a circuit has it already.")
    private Double medicalA;

    @Option(
            names = "--air",
            paramLabel = "C",
            description = "Air and battery temperature of the tests with the engine off, in degrees Celsius, -40 to 70."
                    + " Default: 25.")
    private Double airC;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        Set<String> all = new LinkedHashSet<>(
                ready.vehicle().circuits().stream().map(Circuit::name).toList());
        double rpm = inside("--idle-rpm", idleRpm, 300, 3000, idleRpm(ready));
        double highRpm = inside("--high-idle-rpm", highIdleRpm, 300, 3000, highIdleRpm(ready, rpm));
        double addedA = inside("--medical-load", medicalA, 0, 100, IdleBalanceTest.Rule.AMBULANCE.addedA());
        DutyRunner runner = new DutyRunner(
                ready.vehicle(), chosen(all), all, rpm, highRpm, addedA, inside("--air", airC, -40, 70, USUAL_AIR_C));
        List<DutyOutcome> outcomes = runner.run();
        PrintWriter out = spec.commandLine().getOut();
        out.println(ready.vehicle().name() + ": " + DutyTest.CAUTION);
        out.println();
        Columns.print(FIRST_NUMBER, outcomes.stream().map(DutyText::line).toList(), out);
        for (DutyOutcome outcome : outcomes) {
            out.println();
            out.println(outcome.test());
            DutyText.remarks(outcome).forEach(remark -> out.println("  " + remark));
        }
        out.println();
        out.println("Minimum continuous load: "
                + (minimum == null ? "every circuit, because --minimum names none" : PlainText.names(minimum))
                + ". Total continuous load: every circuit. Maximum load of the ambulance test: every circuit"
                + (addedA > 0 ? " and a medical load of " + PlainText.number(addedA, 0) + " A" : "") + ". Idle at "
                + PlainText.number(rpm, 0) + " per minute, the ambulance test at " + PlainText.number(highRpm, 0)
                + ". Reserve capacity " + PlainText.number(runner.reserveMin(), 0)
                + " min, " + (ready.vehicle().auxiliary().isPresent() ? "both batteries together, " : "")
                + "by the label test on their models as new.");
        return ExitCode.DONE.number();
    }

    private Set<String> chosen(Set<String> all) {
        if (minimum == null) {
            return all;
        }
        for (String name : minimum) {
            if (!all.contains(name)) {
                throw new InputException("--minimum names circuit '" + name + "'; there are " + PlainText.names(all));
            }
        }
        return Set.copyOf(minimum);
    }

    private static double idleRpm(ReadyScenario ready) {
        return ready.scene().phases().stream()
                .filter(phase -> phase.mode() == EngineMode.IDLING)
                .mapToDouble(phase -> phase.speed().lowestRpm())
                .min()
                .orElse(USUAL_IDLE_RPM);
    }

    private static double highIdleRpm(ReadyScenario ready, double idleRpm) {
        return ready.vehicle()
                .engine()
                .highIdle()
                .map(HighIdleControl::highIdleRpm)
                .orElse(idleRpm);
    }

    private static double inside(String option, Double given, double least, double most, double usual) {
        if (given == null) {
            return usual;
        }
        if (!(given >= least && given <= most)) {
            throw new InputException(option + " is " + given + "; allowed is " + PlainText.number(least, 0) + " to "
                    + PlainText.number(most, 0));
        }
        return given;
    }
}

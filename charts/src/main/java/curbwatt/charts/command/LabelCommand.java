package curbwatt.charts.command;

import curbwatt.charts.output.LabelJson;
import curbwatt.charts.output.ReportFolder;
import curbwatt.charts.report.LabelFiles;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.FittedLabel;
import curbwatt.engine.battery.label.LabelFit;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says what the label on a battery implies. */
@Command(
        name = "label",
        header = "Say what a battery's label implies.",
        description = {
            "Finds the battery that passes the three tests its label speaks of, and prints its fitted capacity, Peukert"
                    + " exponent, total charge, diffusion modes (weight and time constant) and resistance, the three tests as"
                    + " simulated, and how long it lasts from full at several constant currents. A figure that the label does"
                    + " not give is estimated from published conversions, and marked so. Figures that contradict each other"
                    + " are refused with what would be possible."
        },
        footer = {
            "Examples:",
            "  curbwatt label --chemistry agm --c20 92 --reserve 160 --cold-cranking 850",
            "  curbwatt label --chemistry flooded --c20 70 --currents 5,20,60 --temperature -10",
            "  curbwatt label --chemistry agm --c20 92 --json",
            "  curbwatt label --chemistry agm --c20 92 --out battery-92"
        })
final class LabelCommand implements Callable<Integer> {

    private static final List<Double> USUAL_CURRENTS_A = List.of(5.0, 10.0, 25.0, 50.0, 100.0);

    @Spec
    private CommandSpec spec;

    @Option(names = "--chemistry", required = true, paramLabel = "KIND", description = "flooded or agm.")
    private String chemistry;

    @Option(
            names = "--c20",
            required = true,
            paramLabel = "AH",
            description = "20 h capacity to 10.5 V at 25 °C, in Ah, 5 to 1000.")
    private double c20Ah;

    @Option(
            names = "--reserve",
            paramLabel = "MIN",
            description = "Reserve capacity, 25 A to 10.5 V at 27 °C, in minutes. Default: estimated from --c20.")
    private Double reserveMin;

    @Option(
            names = "--cold-cranking",
            paramLabel = "A",
            description = "Current that leaves 7.2 V after 30 s at −18 °C, in amperes. Default: estimated from --c20.")
    private Double coldCrankingA;

    @Option(
            names = "--currents",
            paramLabel = "A",
            split = ",",
            description = "Currents of the discharges, in amperes. Default: 5,10,25,50,100.")
    private List<Double> currentsA;

    @Option(
            names = "--temperature",
            paramLabel = "C",
            defaultValue = "25",
            description = "Battery temperature of the discharges, in °C, −40 to 60. Default: 25.")
    private double temperatureC;

    @Option(
            names = "--end-voltage",
            paramLabel = "V",
            defaultValue = "10.5",
            description = "Voltage at which the discharges end, in volts, 8 to 12.5. Default: 10.5.")
    private double endV;

    @Option(names = "--json", description = "Print everything as JSON instead, with points of every discharge.")
    private boolean json;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Also write label.json and a chart of the discharges (SVG and PNG) into this folder.")
    private Path out;

    @Override
    public Integer call() {
        inside("--temperature", temperatureC, -40, 60, "°C");
        inside("--end-voltage", endV, 8, 12.5, "V");
        List<Double> currents = currentsA == null ? USUAL_CURRENTS_A : currentsA;
        currents.forEach(currentA -> inside("--currents", currentA, 0.05, 1000, "A"));
        FittedLabel fitted = fitted();
        PrintWriter print = spec.commandLine().getOut();
        if (out != null) {
            ReportFolder.ofLabel(out).write(LabelFiles.of(fitted, currents, temperatureC, endV));
        }
        if (json) {
            print.print(LabelJson.of(fitted, currents, temperatureC, endV));
            return ExitCode.DONE.number();
        }
        LabelPrinter.print(fitted, print);
        LabelPrinter.printDischarges(fitted, currents, temperatureC, endV, print);
        if (out != null) {
            print.println();
            print.println("Written: " + out);
        }
        return ExitCode.DONE.number();
    }

    private FittedLabel fitted() {
        try {
            return LabelFit.of(new BatteryLabel(kind(), c20Ah, optional(reserveMin), optional(coldCrankingA)));
        } catch (IllegalArgumentException e) {
            throw new InputException("this label can't be: " + e.getMessage());
        }
    }

    private Chemistry kind() {
        return switch (chemistry.toLowerCase(Locale.ROOT)) {
            case "agm" -> Chemistry.AGM;
            case "flooded" -> Chemistry.FLOODED;
            default -> throw new InputException("--chemistry is '" + chemistry + "'; allowed are flooded and agm");
        };
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static void inside(String option, double found, double least, double most, String unit) {
        if (!(found >= least && found <= most)) {
            throw new InputException(
                    option + " is " + found + " " + unit + "; allowed is " + least + " to " + most + " " + unit);
        }
    }
}

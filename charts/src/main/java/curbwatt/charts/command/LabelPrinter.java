package curbwatt.charts.command;

import curbwatt.charts.wording.PlainText;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.DischargeCurve;
import curbwatt.engine.battery.label.FittedLabel;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** A fitted battery at the terminal. */
final class LabelPrinter {

    private LabelPrinter() {}

    static void print(FittedLabel fitted, PrintWriter out) {
        BatteryParameters battery = fitted.parameters();
        out.println((battery.chemistry() == Chemistry.AGM ? "An AGM" : "A flooded") + " battery with this label:");
        out.println();
        Columns.print(
                1,
                List.of(
                        List.of("test", "label", "simulated"),
                        List.of(
                                "20 h to 10.5 V at 25 °C, Ah",
                                PlainText.number(fitted.figures().c20Ah(), 1),
                                PlainText.number(fitted.tests().c20Ah(), 3)),
                        List.of(
                                "25 A to 10.5 V at 27 °C, min" + (fitted.reserveEstimated() ? " (estimated)" : ""),
                                PlainText.number(fitted.figures().reserveMin(), 1),
                                PlainText.number(fitted.tests().reserveMin(), 3)),
                        List.of(
                                "30 s to 7.2 V at −18 °C, A" + (fitted.coldCrankingEstimated() ? " (estimated)" : ""),
                                PlainText.number(fitted.figures().coldCrankingA(), 1),
                                PlainText.number(fitted.tests().coldCrankingA(), 3))),
                out);
        out.println();
        Columns.print(
                1,
                List.of(
                        List.of("capacity, full to empty", PlainText.number(battery.capacityAh(), 3) + " Ah"),
                        List.of("total charge, endlessly slow", PlainText.number(battery.totalChargeAh(), 3) + " Ah"),
                        List.of("Peukert exponent", PlainText.number(battery.peukertExponent(), 4)),
                        List.of(
                                "modes stray from that law by at most",
                                PlainText.number(100 * fitted.peukertResidualFraction(), 2) + " %"),
                        List.of(
                                "resistance, full, 25 °C",
                                PlainText.number(1000 * battery.resistanceOhm(), 3) + " mOhm")),
                out);
        out.println();
        List<List<String>> modes = new ArrayList<>(List.of(List.of("diffusion mode", "time constant", "weight")));
        for (int m = 0; m < battery.modes().size(); m++) {
            modes.add(List.of(
                    String.valueOf(m + 1),
                    PlainText.number(battery.modes().timeConstantH(m), 2) + " h",
                    PlainText.number(battery.modes().weight(m), 5)));
        }
        Columns.print(1, modes, out);
    }

    static void printDischarges(
            FittedLabel fitted, List<Double> currentsA, double temperatureC, double endV, PrintWriter out) {
        Battery battery = Battery.asNew(fitted.parameters());
        out.println();
        out.println(
                "From full at " + PlainText.number(temperatureC, 0) + " °C to " + PlainText.number(endV, 2) + " V:");
        out.println();
        List<List<String>> lines = new ArrayList<>(List.of(List.of("constant current", "lasts", "gives")));
        for (double currentA : currentsA) {
            double timeH = new DischargeCurve(battery, temperatureC, currentA).timeToH(endV);
            lines.add(List.of(
                    PlainText.amperes(currentA),
                    PlainText.time(3600 * timeH),
                    PlainText.ampereHours(currentA * timeH)));
        }
        Columns.print(1, lines, out);
    }
}

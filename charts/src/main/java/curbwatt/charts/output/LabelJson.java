package curbwatt.charts.output;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.label.DischargeCurve;
import curbwatt.engine.battery.label.FittedLabel;
import java.util.List;
import java.util.Locale;

/** What a battery label implies, for other tools; {@code docs/result.md} explains it. */
public final class LabelJson {

    private static final int POINTS = 61;

    private LabelJson() {}

    /**
     * The whole document.
     *
     * @param fitted the label and its battery
     * @param currentsA currents of the discharge curves (A)
     * @param temperatureC their temperature (°C)
     * @param endV voltage at which they end (V)
     */
    public static String of(FittedLabel fitted, List<Double> currentsA, double temperatureC, double endV) {
        Battery battery = Battery.asNew(fitted.parameters());
        return JsonText.of(new JsonObject()
                .with("version", ResultJson.VERSION)
                .with(
                        "label",
                        new JsonObject()
                                .with(
                                        "chemistry",
                                        fitted.label().chemistry().name().toLowerCase(Locale.ROOT))
                                .with("c20Ah", fitted.figures().c20Ah())
                                .with("reserveMin", fitted.figures().reserveMin())
                                .with("reserveEstimated", fitted.reserveEstimated())
                                .with("coldCrankingA", fitted.figures().coldCrankingA())
                                .with("coldCrankingEstimated", fitted.coldCrankingEstimated()))
                .with(
                        "battery",
                        BatteryJson.of(fitted.parameters())
                                .with("peukertResidualFraction", fitted.peukertResidualFraction()))
                .with(
                        "tests",
                        new JsonObject()
                                .with("c20Ah", fitted.tests().c20Ah())
                                .with("reserveMin", fitted.tests().reserveMin())
                                .with("coldCrankingA", fitted.tests().coldCrankingA()))
                .with(
                        "curves",
                        currentsA.stream()
                                .map(currentA -> curve(battery, currentA, temperatureC, endV))
                                .toList()));
    }

    private static JsonObject curve(Battery battery, double currentA, double temperatureC, double endV) {
        DischargeCurve curve = new DischargeCurve(battery, temperatureC, currentA);
        double timeH = curve.timeToH(endV);
        return new JsonObject()
                .with("currentA", currentA)
                .with("temperatureC", temperatureC)
                .with("endV", endV)
                .with("timeH", timeH)
                .with("deliveredAh", currentA * timeH)
                .with(
                        "points",
                        curve.points(POINTS, endV).stream()
                                .map(LabelJson::point)
                                .toList());
    }

    private static JsonObject point(DischargeCurve.Point point) {
        return new JsonObject()
                .with("timeH", point.timeH())
                .with("voltageV", point.voltageV())
                .with("deliveredAh", point.deliveredAh());
    }
}

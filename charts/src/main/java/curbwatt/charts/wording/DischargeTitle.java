package curbwatt.charts.wording;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.label.DischargeCurve;
import curbwatt.engine.battery.label.FittedLabel;
import java.util.List;
import java.util.Locale;

/** The words above the discharges of a fitted battery. */
public final class DischargeTitle {

    private DischargeTitle() {}

    /**
     * Says how much the strongest current leaves behind.
     *
     * @param fitted the label and its battery
     * @param currentsA currents of the discharges (A), at least one
     * @param temperatureC their temperature (°C)
     * @param endV voltage at which they end (V)
     */
    public static Heading of(FittedLabel fitted, List<Double> currentsA, double temperatureC, double endV) {
        Battery battery = Battery.asNew(fitted.parameters());
        double strongestA =
                currentsA.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double givenAh = new DischargeCurve(battery, temperatureC, strongestA).deliveredAh(endV);
        String title = "At " + PlainText.amperes(strongestA) + " it gives " + PlainText.ampereHours(givenAh)
                + " of the " + PlainText.ampereHours(fitted.figures().c20Ah()) + " on its label";
        String subtitle = fitted.label().chemistry().name().toLowerCase(Locale.ROOT)
                + " battery, constant currents from full to "
                + PlainText.volts(endV) + " at " + PlainText.number(temperatureC, 0) + " °C";
        return new Heading(title, subtitle.replaceFirst("^agm", "AGM").replaceFirst("^flooded", "Flooded"));
    }
}

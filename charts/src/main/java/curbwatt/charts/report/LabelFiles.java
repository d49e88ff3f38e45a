package curbwatt.charts.report;

import curbwatt.charts.figure.DischargeCurve;
import curbwatt.charts.figure.DischargeFigure;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.output.LabelJson;
import curbwatt.charts.wording.DischargeTitle;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.label.FittedLabel;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Every file that says what a label implies, in memory. */
public final class LabelFiles {

    private static final int POINTS = 201;

    private LabelFiles() {}

    /**
     * Contents by name relative to the folder.
     *
     * @param fitted the label and its battery
     * @param currentsA currents of the discharges (A)
     * @param temperatureC their temperature (°C)
     * @param endV voltage at which they end (V)
     */
    public static SortedMap<String, byte[]> of(
            FittedLabel fitted, List<Double> currentsA, double temperatureC, double endV) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("label.json", ReportFiles.bytes(LabelJson.of(fitted, currentsA, temperatureC, endV)));
        DrawnPicture.all(List.of(picture(fitted, currentsA, temperatureC, endV)))
                .forEach(drawn -> drawn.addTo(files));
        return Collections.unmodifiableSortedMap(files);
    }

    private static Picture picture(FittedLabel fitted, List<Double> currentsA, double temperatureC, double endV) {
        Battery battery = Battery.asNew(fitted.parameters());
        List<DischargeCurve> curves = currentsA.stream()
                .map(currentA -> curve(battery, currentA, temperatureC, endV))
                .toList();
        return DischargeFigure.of(
                curves, RunPictures.caption(DischargeTitle.of(fitted, currentsA, temperatureC, endV)));
    }

    private static DischargeCurve curve(Battery battery, double currentA, double temperatureC, double endV) {
        return new DischargeCurve(
                PlainText.amperes(currentA),
                new curbwatt.engine.battery.label.DischargeCurve(battery, temperatureC, currentA)
                        .points(POINTS, endV).stream()
                                .map(point -> new DischargeCurve.Point(point.deliveredAh(), point.voltageV()))
                                .toList());
    }
}

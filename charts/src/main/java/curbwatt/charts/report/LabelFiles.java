package curbwatt.charts.report;

import curbwatt.charts.output.LabelJson;
import curbwatt.engine.battery.label.FittedLabel;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Every file that says what a label implies, in memory. */
public final class LabelFiles {

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
        files.put(
                "label.json",
                LabelJson.of(fitted, currentsA, temperatureC, endV).getBytes(StandardCharsets.UTF_8));
        return Collections.unmodifiableSortedMap(files);
    }
}

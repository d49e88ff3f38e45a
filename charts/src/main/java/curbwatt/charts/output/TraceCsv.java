package curbwatt.charts.output;

import curbwatt.engine.result.EquipmentSample;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.TraceRow;
import java.util.ArrayList;
import java.util.List;

/**
 * A trace as comma-separated values after RFC 4180: one head line, CRLF line ends, quotes only where they are needed.
 */
public final class TraceCsv {

    private static final List<String> HEADS = List.of(
            "timeS",
            "nodeV",
            "nodeMinV",
            "nodeMeanV",
            "nodeMaxV",
            "sensedV",
            "sensedMinV",
            "sensedMaxV",
            "batteryMeanA",
            "alternatorMeanA",
            "stateOfCharge",
            "batteryC");

    private static final List<String> EQUIPMENT_HEADS = List.of(
            "equipmentV",
            "equipmentMinV",
            "equipmentMeanV",
            "equipmentMaxV",
            "auxiliaryMeanA",
            "linkMeanA",
            "auxiliaryStateOfCharge",
            "auxiliaryC");

    private static final List<String> SENSED_HEADS = List.of("sensedV", "sensedMinV", "sensedMaxV");

    private TraceCsv() {}

    /** The whole file; {@code docs/result.md} explains each column. */
    public static String of(Trace trace) {
        StringBuilder text = new StringBuilder();
        List<String> heads = new ArrayList<>(HEADS);
        if (trace.rows().stream().anyMatch(row -> row.equipment().isPresent())) {
            heads.addAll(EQUIPMENT_HEADS);
        }
        trace.circuits().forEach(circuit -> heads.add("loadMeanA:" + circuit));
        if (namesCutoffs(trace)) {
            trace.cutoffs().forEach(cutoff -> SENSED_HEADS.forEach(head -> heads.add(head + ":" + cutoff)));
        }
        line(text, heads.stream().map(TraceCsv::quoted).toList());
        for (TraceRow row : trace.rows()) {
            List<Double> values = new ArrayList<>(List.of(
                    row.timeS(),
                    row.nodeV(),
                    row.nodeMinV(),
                    row.nodeMeanV(),
                    row.nodeMaxV(),
                    row.sensedV(),
                    row.sensedMinV(),
                    row.sensedMaxV(),
                    row.batteryMeanA(),
                    row.alternatorMeanA(),
                    row.stateOfChargeFraction(),
                    row.batteryC()));
            row.equipment().ifPresent(sample -> values.addAll(values(sample)));
            values.addAll(row.circuitMeanA());
            if (namesCutoffs(trace)) {
                row.sensed()
                        .forEach(sample ->
                                values.addAll(List.of(sample.voltageV(), sample.lowestV(), sample.highestV())));
            }
            line(text, values.stream().map(TraceCsv::number).toList());
        }
        return text.toString();
    }

    /** A single cutoff's voltage needs no name. */
    private static boolean namesCutoffs(Trace trace) {
        return trace.cutoffs().size() > 1;
    }

    private static List<Double> values(EquipmentSample sample) {
        return List.of(
                sample.nodeV(),
                sample.nodeMinV(),
                sample.nodeMeanV(),
                sample.nodeMaxV(),
                sample.batteryMeanA(),
                sample.linkMeanA(),
                sample.stateOfChargeFraction(),
                sample.batteryC());
    }

    private static void line(StringBuilder text, List<String> fields) {
        text.append(String.join(",", fields)).append("\r\n");
    }

    /** A field that can't be told is empty. */
    private static String number(double value) {
        return Double.isFinite(value) ? DigitText.of(value) : "";
    }

    private static String quoted(String field) {
        boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
    }
}

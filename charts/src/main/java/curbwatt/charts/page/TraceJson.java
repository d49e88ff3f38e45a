package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.engine.result.EquipmentSample;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.TraceRow;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The course of a run, column by column, in whole numbers: a tenth of a millimetre on any screen, and quick to spell. */
final class TraceJson {

    private static final double MILLI = 1e3;
    private static final double TEN_THOUSANDTHS = 1e4;

    private TraceJson() {}

    static JsonObject of(Trace trace) {
        List<TraceRow> rows = trace.rows();
        JsonObject json = new JsonObject()
                .with("timeMs", column(rows, TraceRow::timeS, MILLI))
                .with("lowMv", column(rows, TraceRow::nodeMinV, MILLI))
                .with("meanMv", column(rows, TraceRow::nodeMeanV, MILLI))
                .with("highMv", column(rows, TraceRow::nodeMaxV, MILLI))
                .with("chargeTenThousandths", column(rows, TraceRow::stateOfChargeFraction, TEN_THOUSANDTHS))
                .with("batteryMa", column(rows, TraceRow::batteryMeanA, MILLI))
                .with("alternatorMa", column(rows, TraceRow::alternatorMeanA, MILLI))
                .with("loadMa", column(rows, TraceJson::loadA, MILLI));
        if (rows.get(0).equipment().isPresent()) {
            List<EquipmentSample> equipment =
                    rows.stream().map(row -> row.equipment().orElseThrow()).toList();
            json.with(
                    "equipment",
                    new JsonObject()
                            .with("lowMv", column(equipment, EquipmentSample::nodeMinV, MILLI))
                            .with("meanMv", column(equipment, EquipmentSample::nodeMeanV, MILLI))
                            .with("highMv", column(equipment, EquipmentSample::nodeMaxV, MILLI))
                            .with(
                                    "chargeTenThousandths",
                                    column(equipment, EquipmentSample::stateOfChargeFraction, TEN_THOUSANDTHS)));
        }
        return json;
    }

    private static double loadA(TraceRow row) {
        return row.circuitMeanA().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static <T> List<Long> column(List<T> rows, ToDoubleFunction<T> value, double perUnit) {
        return rows.stream()
                .map(row -> Math.round(perUnit * value.applyAsDouble(row)))
                .toList();
    }
}

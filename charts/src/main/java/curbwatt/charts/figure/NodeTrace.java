package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.Palette;
import curbwatt.engine.result.EquipmentSample;
import curbwatt.engine.result.TraceRow;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * A node and its battery as a trace tells of them.
 *
 * @param key what the node is called in the key
 * @param name what it is called beside its line
 * @param battery what its battery is called beside its line; empty where there is only one
 * @param line colour of its voltage
 * @param range colour of the range of its voltage
 * @param charge colour of its battery's charge
 * @param meanV mean voltage since the line before (V)
 * @param lowestV lowest voltage since the line before (V)
 * @param highestV highest voltage since the line before (V)
 * @param chargeFraction state of charge of its battery
 */
record NodeTrace(
        String key,
        String name,
        String battery,
        Palette line,
        Palette range,
        Palette charge,
        ToDoubleFunction<TraceRow> meanV,
        ToDoubleFunction<TraceRow> lowestV,
        ToDoubleFunction<TraceRow> highestV,
        ToDoubleFunction<TraceRow> chargeFraction) {

    /** Below this a difference is not a flash but the slope of the line (V). */
    private static final double VISIBLE_RANGE_V = 0.02;

    /** The only node, or the starter node and then the equipment node. */
    static List<NodeTrace> of(RunStory story) {
        boolean two = story.scenario().vehicle().auxiliary().isPresent();
        NodeTrace starter = new NodeTrace(
                two ? "Starter node" : "Battery node",
                two ? "starter node" : "node",
                two ? "starter" : "",
                Palette.VOLTAGE,
                Palette.VOLTAGE_RANGE,
                two ? Palette.VOLTAGE : Palette.CHARGE,
                TraceRow::nodeMeanV,
                TraceRow::nodeMinV,
                TraceRow::nodeMaxV,
                TraceRow::stateOfChargeFraction);
        return two ? List.of(starter, equipment()) : List.of(starter);
    }

    /** The node's voltage in a row as it is written beside its line: "node 12.31 V". */
    String voltage(TraceRow row) {
        return name + " " + Levels.volts(meanV.applyAsDouble(row));
    }

    /** The battery's charge at the end as it is written beside its line: "71 % at the end". */
    String endCharge(TraceRow last) {
        return battery.isEmpty() ? percent(last) + " at the end" : battery + " " + percent(last);
    }

    /** Both along the run, in a sentence. */
    String inWords(List<TraceRow> rows) {
        TraceRow first = rows.get(0);
        TraceRow last = rows.get(rows.size() - 1);
        return String.format(
                Locale.ROOT,
                "The %s is at %s at the start and %s at the end; the charge of its battery goes from %s to %s.",
                name,
                Levels.volts(meanV.applyAsDouble(first)),
                Levels.volts(meanV.applyAsDouble(last)),
                percent(first),
                percent(last));
    }

    /** Whether the voltage moves so much between two lines that its range shows. */
    boolean hasVisibleRange(List<TraceRow> rows) {
        return rows.stream()
                .anyMatch(row -> highestV.applyAsDouble(row) - lowestV.applyAsDouble(row) > VISIBLE_RANGE_V);
    }

    private String percent(TraceRow row) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * chargeFraction.applyAsDouble(row));
    }

    private static NodeTrace equipment() {
        return new NodeTrace(
                "Equipment node",
                "equipment node",
                "auxiliary",
                Palette.EQUIPMENT,
                Palette.EQUIPMENT_RANGE,
                Palette.EQUIPMENT,
                row -> sample(row).nodeMeanV(),
                row -> sample(row).nodeMinV(),
                row -> sample(row).nodeMaxV(),
                row -> sample(row).stateOfChargeFraction());
    }

    private static EquipmentSample sample(TraceRow row) {
        return row.equipment().orElseThrow();
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.Palette;
import curbwatt.engine.result.EquipmentSample;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a run's current comes from and what it goes to, as layers that are equally high together at every instant.
 *
 * @param sources from below
 * @param uses from the middle line downwards
 */
record BalanceStacks(List<Layer> sources, List<Layer> uses) {

    /** Means below this are not worth a line in the key (A). */
    private static final double VISIBLE_A = 0.05;

    /** One colour of a stack. */
    record Layer(String name, Color color, ToDoubleFunction<TraceRow> currentA) {

        /** Mean over the scene (A). */
        double meanA(Trace trace) {
            return trace.rows().stream().skip(1).mapToDouble(currentA).average().orElse(0);
        }

        double meanA(List<TraceRow> rows) {
            return rows.stream().mapToDouble(currentA).average().orElse(0);
        }
    }

    /** The layers of a run that can be seen. */
    static BalanceStacks of(RunStory story) {
        List<Layer> sources = new ArrayList<>();
        List<Layer> uses = new ArrayList<>();
        sources.add(new Layer("alternator", Palette.ALTERNATOR.color(), TraceRow::alternatorMeanA));
        StackGroups groups = new StackGroups(story.trace());
        for (int i = 0; i < groups.names().size(); i++) {
            int group = i;
            uses.add(new Layer(groups.names().get(i), Palette.group(i), row -> groups.currentA(group, row)));
        }
        story.scenario()
                .vehicle()
                .auxiliary()
                .ifPresentOrElse(
                        auxiliary -> addTwoBatteries(auxiliary, sources, uses), () -> addBattery("", sources, uses));
        return new BalanceStacks(shown(sources, story.trace()), shown(uses, story.trace()));
    }

    /** Sum of the layers, mean over some rows (A). */
    static double sumA(List<Layer> layers, List<TraceRow> rows) {
        return layers.stream().mapToDouble(layer -> layer.meanA(rows)).sum();
    }

    private static void addBattery(String which, List<Layer> sources, List<Layer> uses) {
        sources.add(new Layer(which + "battery", Palette.BATTERY.color(), row -> Math.max(0, row.batteryMeanA())));
        uses.add(new Layer(
                which.isEmpty() ? "charging" : "charging " + which.strip(),
                Palette.CHARGING.color(),
                row -> Math.max(0, -row.batteryMeanA())));
    }

    private static void addTwoBatteries(AuxiliaryBattery auxiliary, List<Layer> sources, List<Layer> uses) {
        addBattery("starter ", sources, uses);
        sources.add(new Layer(
                "auxiliary battery",
                Palette.EQUIPMENT.color(),
                row -> Math.max(0, sample(row).batteryMeanA())));
        uses.add(new Layer(
                "charging auxiliary",
                Palette.EQUIPMENT_CHARGING.color(),
                row -> Math.max(0, -sample(row).batteryMeanA())));
        // a charger turns voltage into current or current into voltage; any other link passes on what it takes
        String link = auxiliary.linkName();
        sources.add(new Layer(link, Palette.LOAD.color(), row -> Math.max(0, -linkAsideA(row))));
        uses.add(new Layer(link, Palette.LOAD.color(), row -> Math.max(0, linkAsideA(row))));
    }

    /** Current that goes into the link and does not come out of it (A). */
    private static double linkAsideA(TraceRow row) {
        double loadsA =
                row.circuitMeanA().stream().mapToDouble(Double::doubleValue).sum();
        return row.alternatorMeanA() + row.batteryMeanA() + sample(row).batteryMeanA() - loadsA;
    }

    private static EquipmentSample sample(TraceRow row) {
        return row.equipment().orElseThrow();
    }

    private static List<Layer> shown(List<Layer> layers, Trace trace) {
        return layers.stream().filter(layer -> layer.meanA(trace) >= VISIBLE_A).toList();
    }
}

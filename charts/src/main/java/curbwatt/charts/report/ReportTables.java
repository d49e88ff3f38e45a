package curbwatt.charts.report;

import curbwatt.charts.run.FlashComparison;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.BatteryText;
import curbwatt.charts.wording.EventText;
import curbwatt.charts.wording.FlashText;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.event.Event;
import curbwatt.engine.result.CircuitSummary;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.LoadSummary;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables of the report.
 *
 * @param story the run
 */
record ReportTables(RunStory story) {

    /** More events than a reader would read; the rest is in the JSON file. */
    private static final int MOST_EVENTS = 120;

    private static final String NONE = "–";

    List<Table> all() {
        RunResult result = story.result();
        List<Table> tables = new ArrayList<>(List.of(phases(), circuits()));
        tables.addAll(new BatteryTables(story).all());
        tables.addAll(new WiringTables(story).all());
        story.flashing().map(ReportTables::timing).ifPresent(tables::add);
        if (result.loads().stream().anyMatch(load -> load.dropOuts() > 0)) {
            tables.add(dropOuts());
        }
        if (!result.crankChecks().isEmpty()) {
            tables.add(restart());
        }
        tables.add(events());
        return tables;
    }

    private Table phases() {
        return Table.of(
                "phases",
                "Phases",
                isPair()
                        ? "Mean currents; that of both batteries is positive while they give and negative while they are"
                                + " charged. Voltage and charge are those of the starter node."
                        : "Mean currents; the battery's is positive while it gives and negative while it is charged.",
                List.of(
                        "Phase",
                        "#Begins",
                        "#Lasts",
                        "Engine",
                        "#Loads, A",
                        "#Alternator, A",
                        "#of at most, A",
                        isPair() ? "#Batteries, A" : "#Battery, A",
                        "#Voltage, V",
                        "#Charge, %"),
                story.result().phases().stream().map(ReportTables::phase).toList());
    }

    private static List<String> phase(PhaseSummary phase) {
        return List.of(
                phase.phase(),
                PlainText.time(phase.startS()),
                PlainText.time(phase.durationS()),
                phase.engineRan() ? "runs" : "off",
                PlainText.number(phase.meanLoadA(), 1),
                PlainText.number(phase.meanAlternatorA(), 1),
                phase.alternatorCapacityA().isPresent()
                        ? PlainText.number(phase.alternatorCapacityA().getAsDouble(), 0)
                        : NONE,
                PlainText.number(phase.meanBatteryA(), 1),
                PlainText.number(phase.lowestV(), 2) + " … " + PlainText.number(phase.highestV(), 2),
                share(phase.startChargeFraction()) + " → " + share(phase.endChargeFraction()));
    }

    private Table circuits() {
        return Table.of(
                "circuits",
                "Circuits",
                "Voltages are those at the far end of the feed while it is supplied.",
                List.of("Circuit", "Lost", "By", "#Without supply", "#Charge, Ah", "#Peak, A", "#Lowest, V"),
                story.result().circuits().stream().map(ReportTables::circuit).toList());
    }

    private static List<String> circuit(CircuitSummary circuit) {
        return List.of(
                circuit.circuit(),
                circuit.firstLostS().isPresent()
                        ? PlainText.after(circuit.firstLostS().getAsDouble())
                        : "never",
                circuit.lostBy().isEmpty() ? NONE : circuit.lostBy(),
                circuit.disconnectedS() > 0 ? PlainText.time(circuit.disconnectedS()) : NONE,
                PlainText.number(circuit.chargeAh(), 2),
                PlainText.number(circuit.peakA(), 1),
                finite(circuit.lowestV(), 2));
    }

    private static Table timing(FlashComparison flashing) {
        FlashText text = new FlashText(flashing);
        return Table.of(
                "timing",
                "Heads together or in turn",
                String.join(" ", text.sentences()) + " " + FlashText.RULE,
                FlashText.COLUMNS,
                text.lines());
    }

    private Table dropOuts() {
        return Table.of(
                "drop-outs",
                "Loads that dropped out",
                "A load drops out when its own voltage is too low for it, whether or not a cutoff has acted.",
                List.of("Load", "Circuit", "First", "#How often", "#Silent for"),
                story.result().loads().stream()
                        .filter(load -> load.dropOuts() > 0)
                        .map(ReportTables::dropOut)
                        .toList());
    }

    private static List<String> dropOut(LoadSummary load) {
        return List.of(
                load.load(),
                load.circuit(),
                load.firstDropOutS().isPresent()
                        ? PlainText.after(load.firstDropOutS().getAsDouble())
                        : NONE,
                String.valueOf(load.dropOuts()),
                PlainText.time(load.droppedOutS()));
    }

    private Table restart() {
        return Table.of(
                "restart",
                "Would it start?",
                "Lowest battery voltage while cranking, against what is needed at the battery's temperature.",
                List.of(
                        "Asked",
                        "In",
                        "#Battery, °C",
                        "#Cranking, V",
                        "#All equipment off, V",
                        "#Needed, V",
                        "#Margin, V"),
                story.result().crankChecks().stream().map(ReportTables::check).toList());
    }

    private static List<String> check(CrankCheck check) {
        return List.of(
                PlainText.after(check.timeS()),
                check.phase(),
                PlainText.number(check.batteryC(), 1),
                finite(check.lowestV(), 2),
                finite(check.lowestLoadsOffV(), 2),
                PlainText.number(check.minimumV(), 2),
                finite(check.marginV(), 2));
    }

    private Table events() {
        List<String> heads = new ArrayList<>(List.of("Time", "Event", "#Voltage, V"));
        heads.addAll(isPair() ? List.of("#Starter, %", "#Auxiliary, %") : List.of("#Charge, %"));
        int left = story.result().events().size() - MOST_EVENTS;
        return Table.of(
                "events",
                "What happened",
                left > 0
                        ? "The first " + MOST_EVENTS + "; " + PlainText.count(left, "more event") + " in result.json."
                        : "",
                heads,
                story.result().events().stream()
                        .limit(MOST_EVENTS)
                        .map(this::event)
                        .toList());
    }

    private List<String> event(Event event) {
        List<String> cells = new ArrayList<>(List.of(
                PlainText.timeToSecond(event.timeS()),
                EventText.sentence(event),
                finite(event.voltageV(), 2),
                share(event.stateOfChargeFraction())));
        new BatteryText(story).auxiliaryFraction(event.timeS()).ifPresent(fraction -> cells.add(share(fraction)));
        return cells;
    }

    private boolean isPair() {
        return story.result().batteries().size() > 1;
    }

    private static String finite(double value, int decimals) {
        return Double.isFinite(value) ? PlainText.number(value, decimals) : NONE;
    }

    private static String share(double fraction) {
        return PlainText.number(100 * fraction, 1);
    }
}

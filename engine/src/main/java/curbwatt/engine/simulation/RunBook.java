package curbwatt.engine.simulation;

import curbwatt.engine.battery.ElectrolyteFreezing;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.LoadSummary;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Everything that a run notes down on its way. */
final class RunBook {

    private final BatteryWork battery;
    private final ElectrolyteFreezing freezing = new ElectrolyteFreezing();
    private final List<Event> events = new ArrayList<>();
    private final List<CrankCheck> crankChecks = new ArrayList<>();
    private final List<PhaseSummary> phases = new ArrayList<>();
    private final List<CircuitBook> circuits = new ArrayList<>();
    private final LedgerBook ledger;
    private PhaseBook phase;
    private double lowestV = Double.POSITIVE_INFINITY;
    private double lowestAtS;
    private double lowestCharge = Double.POSITIVE_INFINITY;
    private double freezingMarginK = Double.POSITIVE_INFINITY;
    private long steps;

    RunBook(BatteryWork battery, List<CircuitState> states) {
        this.battery = battery;
        ledger = new LedgerBook(battery);
        for (int c = 0; c < states.size(); c++) {
            circuits.add(new CircuitBook(states.get(c), c));
        }
    }

    void event(double timeS, EventKind kind, String subject, double voltageV, double charge) {
        events.add(new Event(timeS, kind, subject, voltageV, charge));
    }

    void crankCheck(CrankCheck check) {
        crankChecks.add(check);
    }

    void begin(PhaseBook next) {
        phase = next;
        noteCold();
    }

    void endPhase() {
        phases.add(phase.summary(battery.stateOfChargeFraction()));
        noteCold();
    }

    void lost(int circuit, double timeS, String by) {
        circuits.get(circuit).lost(timeS, by);
    }

    /** Adds a step that ends in the battery's present state. */
    void add(double startS, double lengthS, OperatingPoint start, OperatingPoint end, double startCharge) {
        double endCharge = battery.stateOfChargeFraction();
        steps++;
        ledger.add(lengthS, start, end, startCharge, endCharge);
        phase.add(lengthS, start, end);
        for (int c = 0; c < circuits.size(); c++) {
            circuits.get(c).add(lengthS, start, end);
        }
        lowestCharge = Math.min(lowestCharge, Math.min(startCharge, endCharge));
        if (start.nodeV < lowestV) {
            lowestV = start.nodeV;
            lowestAtS = startS;
        }
        if (end.nodeV < lowestV) {
            lowestV = end.nodeV;
            lowestAtS = startS + lengthS;
        }
    }

    /** Notes how far the battery is from freezing. */
    void noteCold() {
        freezingMarginK =
                Math.min(freezingMarginK, battery.temperatureC() - freezing.freezingC(battery.stateOfChargeFraction()));
    }

    RunResult result(double durationS, OptionalDouble restartTimeS) {
        events.sort(Comparator.comparingDouble(Event::timeS));
        List<LoadSummary> loads =
                circuits.stream().flatMap(circuit -> circuit.loads().stream()).toList();
        return new RunResult(
                durationS,
                events,
                crankChecks,
                restartTimeS,
                phases,
                circuits.stream().map(CircuitBook::summary).toList(),
                loads,
                ledger.charge(),
                ledger.energy(),
                lowestV,
                lowestAtS,
                battery.stateOfChargeFraction(),
                lowestCharge,
                freezingMarginK,
                steps);
    }
}

package curbwatt.engine.simulation.book;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.LoadSummary;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Everything that a run notes down on its way. */
public final class RunBook {

    private final Batteries batteries;
    private final List<Event> events = new ArrayList<>();
    private final List<CrankCheck> crankChecks = new ArrayList<>();
    private final List<PhaseSummary> phases = new ArrayList<>();
    private final List<CircuitBook> circuits = new ArrayList<>();
    private final List<BatteryBook> batteryBooks = new ArrayList<>();
    private final Optional<LinkBook> link;
    private final LedgerBook ledger;
    private final EngineBook engineBook;
    private PhaseBook phase;
    private double lowestV = Double.POSITIVE_INFINITY;
    private double lowestAtS;
    private long steps;

    public RunBook(Vehicle vehicle, Batteries batteries, List<CircuitState> states, Optional<LinkState> linkState) {
        this.batteries = batteries;
        batteryBooks.add(new BatteryBook(vehicle.battery().name(), batteries.starter()));
        vehicle.auxiliary()
                .ifPresent(second ->
                        batteryBooks.add(new BatteryBook(second.installation().name(), batteries.auxiliary())));
        link = linkState.map(
                state -> new LinkBook(vehicle.auxiliary().orElseThrow().linkName(), state));
        ledger = new LedgerBook(batteryBooks);
        engineBook = new EngineBook(vehicle.engine().fuel());
        for (int c = 0; c < states.size(); c++) {
            circuits.add(new CircuitBook(states.get(c), c));
        }
    }

    public void event(double timeS, EventKind kind, String subject, double voltageV, double charge) {
        events.add(new Event(timeS, kind, subject, voltageV, charge));
    }

    public EngineBook engine() {
        return engineBook;
    }

    public void engineStarted() {
        engineBook.started();
    }

    public void crankCheck(CrankCheck check) {
        crankChecks.add(check);
    }

    public void begin(PhaseBook next) {
        phase = next;
        noteCold();
    }

    public void endPhase() {
        phases.add(phase.summary(batteries.starter().stateOfChargeFraction()));
        noteCold();
    }

    public void lost(int circuit, double timeS, String by) {
        circuits.get(circuit).lost(timeS, by);
    }

    /** Adds a step that ends in the batteries' present state. */
    public void add(double startS, double lengthS, OperatingPoint start, OperatingPoint end, EngineState engine) {
        steps++;
        batteryBooks.get(0).add(lengthS, start.starter, end.starter);
        if (batteries.areTwo()) {
            batteryBooks.get(1).add(lengthS, start.equipment, end.equipment);
        }
        add(lengthS, startS, startS + lengthS, start, end, engine);
        note(startS, start);
        note(startS + lengthS, end);
    }

    /** Turns to an instant of a long step, and to the batteries at that instant. */
    public void turnTo(Batteries at) {
        batteryBooks.get(0).turnTo(at.starter().stateOfChargeFraction());
        if (batteries.areTwo()) {
            batteryBooks.get(1).turnTo(at.auxiliary().stateOfChargeFraction());
        }
    }

    /** Adds so much time at that instant, in one combination of lit loads. Extremes are noted apart. */
    public void addShare(double weightS, double timeS, OperatingPoint point, EngineState engine) {
        batteryBooks.get(0).addShare(weightS, point.starter);
        if (batteries.areTwo()) {
            batteryBooks.get(1).addShare(weightS, point.equipment);
        }
        add(weightS, timeS, timeS, point, point, engine);
    }

    /** Ends a long step, after its shares were added and the batteries moved. */
    public void endLongStep() {
        steps++;
        batteryBooks.get(0).moved(batteries.starter().stateOfChargeFraction());
        if (batteries.areTwo()) {
            batteryBooks.get(1).moved(batteries.auxiliary().stateOfChargeFraction());
        }
    }

    private void add(
            double weightS, double fromS, double toS, OperatingPoint start, OperatingPoint end, EngineState engine) {
        engineBook.add(weightS, fromS, toS, start, end, engine);
        if (batteries.areTwo()) {
            link.orElseThrow().add(weightS, start, end);
        }
        ledger.add(weightS, start, end);
        phase.add(weightS, start, end);
        for (int c = 0; c < circuits.size(); c++) {
            circuits.get(c).add(weightS, start, end);
        }
    }

    /** Whether an instant on the parabola through three might be one to note: most combinations of lit loads set no mark. */
    public boolean mayNote(OperatingPoint start, OperatingPoint middle, OperatingPoint end) {
        boolean may = batteryBooks.get(0).mayNote(start.starter, middle.starter, end.starter)
                || phase.mayNote(start.starter, middle.starter, end.starter);
        if (batteries.areTwo()) {
            may |= batteryBooks.get(1).mayNote(start.equipment, middle.equipment, end.equipment)
                    || link.orElseThrow().mayNote(start, middle, end);
        }
        for (int c = 0; !may && c < circuits.size(); c++) {
            may = circuits.get(c).mayNote(start, middle, end);
        }
        return may;
    }

    /** Notes an instant: lowest voltages, largest currents. */
    public void note(double timeS, OperatingPoint point) {
        batteryBooks.get(0).note(point.starter);
        if (batteries.areTwo()) {
            batteryBooks.get(1).note(point.equipment);
            link.orElseThrow().note(point);
        }
        phase.note(point);
        for (int c = 0; c < circuits.size(); c++) {
            circuits.get(c).note(timeS, point);
        }
        if (point.starter.nodeV < lowestV) {
            lowestV = point.starter.nodeV;
            lowestAtS = timeS;
        }
    }

    /** Notes how far the batteries are from freezing. */
    public void noteCold() {
        batteryBooks.forEach(BatteryBook::noteCold);
    }

    public RunResult result(double durationS, OptionalDouble restartTimeS, double raisedS, int raises) {
        events.sort(Comparator.comparingDouble(Event::timeS));
        List<LoadSummary> loads =
                circuits.stream().flatMap(circuit -> circuit.loads().stream()).toList();
        List<BatterySummary> summaries =
                batteryBooks.stream().map(BatteryBook::summary).toList();
        BatterySummary starter = summaries.get(0);
        return new RunResult(
                durationS,
                events,
                crankChecks,
                restartTimeS,
                phases,
                circuits.stream().map(CircuitBook::summary).toList(),
                loads,
                summaries,
                link.map(LinkBook::summary),
                engineBook.summary(raisedS, raises),
                ledger.charge(),
                ledger.energy(),
                lowestV,
                lowestAtS,
                starter.endChargeFraction(),
                starter.lowestChargeFraction(),
                starter.smallestFreezingMarginK(),
                steps);
    }
}

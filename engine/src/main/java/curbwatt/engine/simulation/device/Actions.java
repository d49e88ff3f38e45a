package curbwatt.engine.simulation.device;

import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.clock.Reading;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.LoadState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;

/**
 * Everything that watches a voltage or a current and acts: the link, cutoffs, fuses, loads that drop out and come back.
 *
 * <p>Asked about a step that may be taken, it says when the first of them acts; told that the step up to there was
 * taken, it
 * lets that one act. At one instant the link goes before cutoffs, cutoffs before fuses and fuses before loads, in the
 * vehicle's order, one action at a time.
 */
public final class Actions {

    private final LoadBank bank;
    private final List<CutoffState> cutoffs;
    private final SenseTap[] taps;
    private final Optional<LinkState> link;
    private final String linkName;
    private final RunBook book;
    private Act next = NOTHING;

    private static final Act NOTHING = (timeS, point, charge) -> {};

    /** What the device that is first does. */
    private interface Act {
        void at(double timeS, OperatingPoint point, double charge);
    }

    public Actions(LoadBank bank, Vehicle vehicle, Optional<LinkState> link, RunBook book) {
        this.bank = bank;
        this.link = link;
        this.book = book;
        linkName = vehicle.auxiliary().map(AuxiliaryBattery::linkName).orElse("");
        cutoffs = vehicle.cutoffs().stream().map(CutoffState::new).toList();
        taps = vehicle.cutoffs().stream().map(cutoff -> tap(cutoff.sense())).toArray(SenseTap[]::new);
    }

    public List<CutoffState> cutoffs() {
        return cutoffs;
    }

    /** Where a cutoff senses. */
    public SenseTap tap(int cutoff) {
        return taps[cutoff];
    }

    /** Where the cutoffs sense, in the vehicle's order. */
    public List<SenseTap> taps() {
        return List.of(taps);
    }

    /** Where a device senses. */
    public SenseTap tap(SensePoint sense) {
        if (sense instanceof SensePoint.FeedEnd end) {
            return SenseTap.feedEnd(bank.circuits.stream()
                    .map(state -> state.circuit.name())
                    .toList()
                    .indexOf(end.circuit()));
        }
        return sense instanceof SensePoint.EquipmentNode ? SenseTap.equipmentNode() : SenseTap.starterNode();
    }

    /** Time in a step at which the first of them acts; positive infinity: none does (s). */
    public double firstS(double lengthS, OperatingPoint start, OperatingPoint end, boolean engineRuns) {
        double firstS = Double.POSITIVE_INFINITY;
        next = NOTHING;
        if (link.isPresent()) {
            double actsS = link.get().actsS(lengthS, start.starter.nodeV, end.starter.nodeV);
            if (actsS <= lengthS) {
                firstS = actsS;
                next = this::switchLink;
            }
        }
        for (int i = 0; i < cutoffs.size(); i++) {
            CutoffState state = cutoffs.get(i);
            SenseTap tap = taps[i];
            state.sense(lengthS, tap.voltageV(start), tap.voltageV(end));
            double actsS = state.nextActionS(engineRuns);
            if (actsS < firstS && actsS <= lengthS) {
                firstS = actsS;
                next = (timeS, point, charge) -> actOn(state, tap, timeS, point, charge);
            }
        }
        for (int c = 0; c < bank.circuits.size(); c++) {
            CircuitState state = bank.circuits.get(c);
            int place = c;
            double meanA = 0.5 * (start.circuitA[c] + end.circuitA[c]);
            double opensS = state.fuseOpensInS(meanA);
            if (opensS < firstS && opensS <= lengthS) {
                firstS = opensS;
                next = (timeS, point, charge) -> openFuse(state, place, timeS, point, charge);
            }
        }
        for (int c = 0; c < bank.circuits.size(); c++) {
            CircuitState state = bank.circuits.get(c);
            if (state.hasDropOuts && state.isFed()) {
                firstS = firstOfLoads(c, state.farReading(lengthS, start.farV[c], end.farV[c]), firstS);
            }
        }
        return firstS;
    }

    private double firstOfLoads(int place, Reading far, double boundS) {
        CircuitState state = bank.circuits.get(place);
        double firstS = boundS;
        for (int i = 0; i < state.loads.size(); i++) {
            LoadState load = state.loads.get(i);
            double actsS = Double.POSITIVE_INFINITY;
            if (load.droppedOut) {
                actsS = load.returnTimer().expiryS(far);
            } else if (load.mayDropOut()) {
                actsS = load.dropTimer().expiryS(far);
            }
            if (actsS < firstS && actsS <= far.lengthS()) {
                firstS = actsS;
                next = (timeS, point, charge) -> switchLoad(state, load, timeS, point.farV[place], charge);
            }
        }
        return firstS;
    }

    /** Takes note of a step that was taken. */
    public void advance(double lengthS, OperatingPoint start, OperatingPoint end, boolean engineRuns) {
        if (link.isPresent()) {
            link.get().advance(lengthS, start.starter.nodeV, end.starter.nodeV);
        }
        for (int i = 0; i < cutoffs.size(); i++) {
            CutoffState state = cutoffs.get(i);
            state.sense(lengthS, taps[i].voltageV(start), taps[i].voltageV(end));
            state.advance(engineRuns);
        }
        for (int c = 0; c < bank.circuits.size(); c++) {
            CircuitState state = bank.circuits.get(c);
            state.warmFuse(0.5 * (start.circuitA[c] + end.circuitA[c]), lengthS);
            if (state.hasDropOuts && state.isFed()) {
                Reading far = state.farReading(lengthS, start.farV[c], end.farV[c]);
                for (int i = 0; i < state.loads.size(); i++) {
                    LoadState candidate = state.loads.get(i);
                    if (candidate.droppedOut) {
                        candidate.returnTimer().advance(far);
                    }
                }
            }
        }
    }

    /** Lets the one that {@link #firstS} found act, at the end of the step just taken. */
    public void act(double timeS, OperatingPoint point, double charge) {
        next.at(timeS, point, charge);
    }

    private void switchLink(double timeS, OperatingPoint point, double charge) {
        LinkState state = link.orElseThrow();
        state.act();
        EventKind did = state.isClosed() ? EventKind.LINK_CLOSED : EventKind.LINK_OPENED;
        book.event(timeS, did, linkName, point.starter.nodeV, charge);
    }

    private void actOn(CutoffState cutoff, SenseTap tap, double timeS, OperatingPoint point, double charge) {
        EventKind did = cutoff.act();
        book.event(timeS, did, cutoff.settings.name(), tap.voltageV(point), charge);
        if (did != EventKind.WARNING_BEGAN && did != EventKind.WARNING_ENDED) {
            switchContact(cutoff, timeS);
        }
    }

    private void openFuse(CircuitState circuit, int place, double timeS, OperatingPoint point, double charge) {
        circuit.openFuse();
        bank.changed(circuit, timeS);
        String name = circuit.circuit.name();
        book.event(timeS, EventKind.FUSE_OPENED, name, point.farV[place], charge);
        book.lost(place, timeS, name);
    }

    private void switchLoad(CircuitState circuit, LoadState load, double timeS, double loadV, double charge) {
        boolean returns = load.droppedOut;
        if (returns) {
            load.droppedOut = false;
        } else {
            load.dropOut(timeS);
        }
        bank.changed(circuit, timeS);
        EventKind did = returns ? EventKind.LOAD_RETURNED : EventKind.LOAD_DROPPED_OUT;
        book.event(timeS, did, load.load.name(), loadV, charge);
    }

    /** Closes the contacts that close when the engine runs. */
    public void engineRuns(double timeS, double nodeV, double charge) {
        for (CutoffState state : cutoffs) {
            if (state.closesOnEngine()) {
                book.event(timeS, EventKind.CUTOFF_RECLOSED, state.settings.name(), nodeV, charge);
                switchContact(state, timeS);
            }
        }
    }

    private void switchContact(CutoffState state, double timeS) {
        bank.disconnect(state.settings.circuits(), state.isOpen(), timeS);
        if (state.isOpen()) {
            for (int c = 0; c < bank.circuits.size(); c++) {
                if (state.settings
                        .circuits()
                        .contains(bank.circuits.get(c).circuit.name())) {
                    book.lost(c, timeS, state.settings.name());
                }
            }
        }
    }
}

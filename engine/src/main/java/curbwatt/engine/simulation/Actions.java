package curbwatt.engine.simulation;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.EventKind;
import java.util.List;

/**
 * Everything that watches a voltage and acts: cutoffs, loads that drop out, loads that come back.
 *
 * <p>Asked about a step that may be taken, it says when the first of them acts; told that the step up to there was
 * taken, it
 * lets that one act. At one instant cutoffs go before loads, in the vehicle's order, one action at a time.
 */
final class Actions {

    private final LoadBank bank;
    private final List<CutoffState> cutoffs;
    private final int[] senseCircuit;
    private final RunBook book;
    private CutoffState cutoff;
    private int cutoffPlace;
    private CircuitState circuit;
    private LoadState load;

    Actions(LoadBank bank, List<LowVoltageCutoff> cutoffs, RunBook book) {
        this.bank = bank;
        this.cutoffs = cutoffs.stream().map(CutoffState::new).toList();
        this.book = book;
        senseCircuit = cutoffs.stream()
                .mapToInt(settings -> settings.sense() instanceof SensePoint.FeedEnd end ? placeOf(end.circuit()) : -1)
                .toArray();
    }

    List<CutoffState> cutoffs() {
        return cutoffs;
    }

    /** Place of the circuit at whose far end the first cutoff senses; −1: at the node. */
    int firstSenseCircuit() {
        return senseCircuit.length == 0 ? -1 : senseCircuit[0];
    }

    private int placeOf(String name) {
        return bank.circuits.stream()
                .map(state -> state.circuit.name())
                .toList()
                .indexOf(name);
    }

    /** Time in a step at which the first of them acts; positive infinity: none does (s). */
    double firstS(double lengthS, OperatingPoint start, OperatingPoint end, boolean engineRuns) {
        double firstS = Double.POSITIVE_INFINITY;
        cutoff = null;
        load = null;
        for (int i = 0; i < cutoffs.size(); i++) {
            CutoffState state = cutoffs.get(i);
            state.sense(lengthS, sensedV(i, start), sensedV(i, end));
            double actsS = state.nextActionS(engineRuns);
            if (actsS < firstS && actsS <= lengthS) {
                firstS = actsS;
                cutoff = state;
                cutoffPlace = i;
            }
        }
        for (int c = 0; c < bank.circuits.size(); c++) {
            CircuitState state = bank.circuits.get(c);
            if (state.hasDropOuts && state.isFed()) {
                firstS = firstOfLoads(state, state.farReading(lengthS, start.farV[c], end.farV[c]), firstS);
            }
        }
        return firstS;
    }

    private double firstOfLoads(CircuitState state, Reading far, double boundS) {
        double firstS = boundS;
        for (int i = 0; i < state.loads.size(); i++) {
            LoadState candidate = state.loads.get(i);
            double actsS = Double.POSITIVE_INFINITY;
            if (candidate.droppedOut) {
                actsS = candidate.returnTimer().expiryS(far);
            } else if (candidate.mayDropOut()) {
                actsS = candidate.dropTimer().expiryS(far);
            }
            if (actsS < firstS && actsS <= far.lengthS()) {
                firstS = actsS;
                cutoff = null;
                circuit = state;
                load = candidate;
            }
        }
        return firstS;
    }

    private double sensedV(int place, OperatingPoint point) {
        return senseCircuit[place] < 0 ? point.nodeV : point.farV[senseCircuit[place]];
    }

    /** Takes note of a step that was taken. */
    void advance(double lengthS, OperatingPoint start, OperatingPoint end, boolean engineRuns) {
        for (int i = 0; i < cutoffs.size(); i++) {
            CutoffState state = cutoffs.get(i);
            state.sense(lengthS, sensedV(i, start), sensedV(i, end));
            state.advance(engineRuns);
        }
        for (int c = 0; c < bank.circuits.size(); c++) {
            CircuitState state = bank.circuits.get(c);
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
    void act(double timeS, OperatingPoint point, double charge) {
        if (cutoff != null) {
            LowVoltageCutoff settings = cutoff.settings;
            EventKind did = cutoff.act();
            book.event(timeS, did, settings.name(), sensedV(cutoffPlace, point), charge);
            if (did != EventKind.WARNING_BEGAN && did != EventKind.WARNING_ENDED) {
                switchContact(cutoff, timeS);
            }
            return;
        }
        double loadV = point.farV[bank.circuits.indexOf(circuit)];
        boolean returns = load.droppedOut;
        if (returns) {
            load.droppedOut = false;
        } else {
            load.dropOut(timeS);
        }
        circuit.addUp();
        EventKind did = returns ? EventKind.LOAD_RETURNED : EventKind.LOAD_DROPPED_OUT;
        book.event(timeS, did, load.load.name(), loadV, charge);
    }

    /** Closes the contacts that close when the engine runs. */
    void engineRuns(double timeS, double nodeV, double charge) {
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

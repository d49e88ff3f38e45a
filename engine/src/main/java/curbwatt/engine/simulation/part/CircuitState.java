package curbwatt.engine.simulation.part;

import curbwatt.engine.simulation.clock.Reading;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;

/** One circuit between steps: fed or not, and what its loads draw now and at most. */
public final class CircuitState {

    public final Circuit circuit;
    public final List<LoadState> loads;
    /** What the loads lit at this instant draw. */
    public final CircuitDraw now;
    /** What all loads that the phase wants draw when lit at once. */
    public final CircuitDraw allLit;

    /** Whether any load can drop out, so that the far end has to be watched at all. */
    public final boolean hasDropOuts;

    public boolean disconnected;
    public boolean collapsed;
    private boolean fuseOpen;
    private double fuseHeat;
    private final Reading farReading = new Reading(0);

    public CircuitState(Circuit circuit) {
        this.circuit = circuit;
        loads = circuit.loads().stream().map(LoadState::new).toList();
        hasDropOuts = circuit.loads().stream().anyMatch(load -> load.dropOut().isPossible());
        now = new CircuitDraw(circuit.feedOhm());
        allLit = new CircuitDraw(circuit.feedOhm());
    }

    public boolean isFed() {
        return !disconnected && !collapsed && !fuseOpen;
    }

    /** Adds up anew what the loads draw at a time; to be called whenever one of them has changed. */
    void addUp(long timeNs) {
        now.clear();
        allLit.clear();
        for (int i = 0; i < loads.size(); i++) {
            loads.get(i).note(isFed(), timeNs);
        }
        if (!isFed()) {
            return;
        }
        for (int i = 0; i < loads.size(); i++) {
            LoadState state = loads.get(i);
            if (state.isLit()) {
                now.add(state.load, state.surgeFactor());
            } else {
                now.addConstant(state.restingA());
            }
            if (state.wanted && !state.droppedOut) {
                allLit.add(state.load);
            } else {
                allLit.addConstant(state.restingA());
            }
        }
    }

    /** Time until its fuse opens at a current; positive infinity: it holds, or there is none (s). */
    public double fuseOpensInS(double currentA) {
        return circuit.fuse().isEmpty() || fuseOpen
                ? Double.POSITIVE_INFINITY
                : circuit.fuse().get().opensInS(fuseHeat, currentA);
    }

    /** Lets a current warm the fuse for a time. */
    public void warmFuse(double currentA, double durationS) {
        if (circuit.fuse().isPresent() && !fuseOpen) {
            fuseHeat = circuit.fuse().get().heatAfter(fuseHeat, currentA, durationS);
        }
    }

    /** Opens the fuse, for good. */
    public void openFuse() {
        fuseOpen = true;
    }

    /** Takes the supply away or gives it back; what had dropped out starts anew. */
    public void disconnect(boolean away) {
        disconnected = away;
        loads.forEach(state -> state.droppedOut = false);
    }

    /** The voltage at the far end through a step. */
    public Reading farReading(double lengthS, double startV, double endV) {
        farReading.set(lengthS, startV, endV, startV);
        return farReading;
    }
}

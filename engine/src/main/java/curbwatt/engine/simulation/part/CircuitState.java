package curbwatt.engine.simulation.part;

import curbwatt.engine.simulation.clock.Reading;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.wiring.InstalledFuse;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** One circuit between steps: fed or not, and what its loads draw now and at most. */
public final class CircuitState {

    public final Circuit circuit;
    public final List<LoadState> loads;
    /** What the loads draw for which the network is solved: those lit at this instant, unless {@link #suppose}d else. */
    public CircuitDraw now;

    private final CircuitDraw present;
    /** What all loads that the phase wants draw when lit at once. */
    public final CircuitDraw allLit;

    /** Whether any load can drop out, so that the far end has to be watched at all. */
    public final boolean hasDropOuts;

    public boolean disconnected;
    public boolean collapsed;
    /** Current up to which its fuse, if it has one, never opens (A). */
    private final double fuseHoldsA;

    private boolean fuseOpen;
    private double fuseHeat;
    private final Reading farReading = new Reading(0);

    public CircuitState(Circuit circuit) {
        this.circuit = circuit;
        loads = circuit.loads().stream().map(LoadState::new).toList();
        hasDropOuts = circuit.loads().stream().anyMatch(load -> load.dropOut().isPossible());
        fuseHoldsA = circuit.fuse().map(InstalledFuse::effectiveA).orElse(Double.POSITIVE_INFINITY);
        present = new CircuitDraw(circuit.feedOhm());
        now = present;
        allLit = new CircuitDraw(circuit.feedOhm());
    }

    public boolean isFed() {
        return !disconnected && !collapsed && !fuseOpen;
    }

    /** Adds up anew what the loads draw at a time; to be called whenever one of them has changed. */
    void addUp(long timeNs) {
        allLit.clear();
        for (int i = 0; i < loads.size(); i++) {
            loads.get(i).note(isFed(), timeNs);
        }
        addUp(present, LoadState::presentFactor);
        if (!isFed()) {
            return;
        }
        for (int i = 0; i < loads.size(); i++) {
            LoadState state = loads.get(i);
            if (state.wanted && !state.droppedOut) {
                allLit.add(state.load);
            } else {
                allLit.addConstant(state.restingA());
            }
        }
    }

    /** What the loads draw if they draw multiples of their rated currents; 0: not lit. */
    public CircuitDraw drawing(ToDoubleFunction<LoadState> factor) {
        CircuitDraw draw = new CircuitDraw(circuit.feedOhm());
        addUp(draw, factor);
        return draw;
    }

    private void addUp(CircuitDraw draw, ToDoubleFunction<LoadState> factor) {
        draw.clear();
        if (!isFed()) {
            return;
        }
        for (int i = 0; i < loads.size(); i++) {
            LoadState state = loads.get(i);
            double lit = factor.applyAsDouble(state);
            if (lit > 0) {
                draw.add(state.load, lit);
            } else {
                draw.addConstant(state.restingA());
            }
        }
    }

    /** Lets the network be solved for another draw than that of this instant. */
    public void suppose(CircuitDraw draw) {
        now = draw;
    }

    /** Lets the network be solved for this instant again. */
    public void supposeNothing() {
        now = present;
    }

    /** Time until its fuse opens at a current; positive infinity: it holds, or there is none (s). */
    public double fuseOpensInS(double currentA) {
        return Math.abs(currentA) <= fuseHoldsA || fuseOpen
                ? Double.POSITIVE_INFINITY
                : circuit.fuse().get().opensInS(fuseHeat, currentA);
    }

    /** Lets a current warm the fuse for a time. */
    public void warmFuse(double currentA, double durationS) {
        boolean staysCold = fuseHeat == 0 && Math.abs(currentA) <= fuseHoldsA;
        if (!staysCold && circuit.fuse().isPresent() && !fuseOpen) {
            fuseHeat = circuit.fuse().get().heatAfter(fuseHeat, currentA, durationS);
        }
    }

    /** How fast a current warms the fuse (1/s); 0: not at all, or there is none. */
    public double fuseWarmsPerS(double currentA) {
        return Math.abs(currentA) <= fuseHoldsA || fuseOpen
                ? 0
                : circuit.fuse().get().warmsPerS(currentA);
    }

    /** Lets a current that warms the fuse so fast flow for a time. */
    public void warmFuseSoFast(double warmsPerS, double durationS) {
        fuseHeat = InstalledFuse.heatAfterWarming(fuseHeat, warmsPerS, durationS);
    }

    /** Whether currents up to one leave the fuse as cold as it is, or colder. */
    public boolean isFuseCalm(double highestA) {
        return fuseOpensInS(highestA) == Double.POSITIVE_INFINITY;
    }

    /** Whether no lit load would drop out at voltages from one up. */
    public boolean keepsLoads(double lowestFarV) {
        for (int i = 0; i < loads.size(); i++) {
            LoadState state = loads.get(i);
            if (state.wanted
                    && !state.droppedOut
                    && lowestFarV < state.load.dropOut().levelV()) {
                return false;
            }
        }
        return true;
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

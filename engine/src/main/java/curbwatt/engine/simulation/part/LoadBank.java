package curbwatt.engine.simulation.part;

import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.clock.EdgeTrain;
import curbwatt.engine.simulation.clock.FlashCycle;
import curbwatt.engine.simulation.clock.FlashLayouts;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** All circuits and loads between steps, and the clockwork that lights them. */
public final class LoadBank {

    /** Edges within this time are one instant (ns): no voltage is solved between them. */
    private static final long ONE_INSTANT_NS = 1000;

    private static final double NS_PER_S = 1e9;

    public final List<CircuitState> circuits;
    /** How flashes lie in time. */
    public final FlashLayouts layouts;

    private final LoadState[] timedLoads;
    private final CircuitState[] timedCircuits;
    private long nextEdgeNs;
    private long changes;
    private double changedS;

    /**
     * Makes a bank.
     *
     * @param layouts how flashes lie in time, as far as other runs have found it out
     */
    public LoadBank(Vehicle vehicle, FlashLayouts layouts) {
        this.layouts = layouts;
        circuits = vehicle.circuits().stream().map(CircuitState::new).toList();
        List<LoadState> timed = new ArrayList<>();
        List<CircuitState> theirs = new ArrayList<>();
        for (CircuitState circuit : circuits) {
            for (LoadState state : circuit.loads) {
                if (state.isTimed()) {
                    timed.add(state);
                    theirs.add(circuit);
                }
            }
        }
        timedLoads = timed.toArray(LoadState[]::new);
        timedCircuits = theirs.toArray(CircuitState[]::new);
        findNextEdge();
    }

    /** Switches stages for a phase at a time; circuits that had collapsed try again. */
    public void begin(Phase phase, double timeS) {
        for (CircuitState circuit : circuits) {
            circuit.collapsed = false;
            for (LoadState state : circuit.loads) {
                state.wanted = state.load.isOnIn(phase.stages());
                state.droppedOut &= state.wanted;
            }
        }
        catchUp(timeS);
    }

    /** Opens or closes the contact of some circuits. */
    public void disconnect(Set<String> names, boolean away, double timeS) {
        for (CircuitState circuit : circuits) {
            if (names.contains(circuit.circuit.name())) {
                circuit.disconnect(away);
            }
        }
        catchUp(timeS);
    }

    /** Lets a circuit fall silent until the next phase. */
    public void collapse(CircuitState circuit, double timeS) {
        circuit.collapsed = true;
        changed(circuit, timeS);
    }

    /** A load of a circuit has dropped out or come back. */
    public void changed(CircuitState circuit, double timeS) {
        changedAt(timeS);
        circuit.addUp(Math.round(timeS * NS_PER_S));
        findNextEdge();
    }

    /** Time of the next change of a wanted load since the scene's start (s). */
    public double nextEdgeS() {
        return nextEdgeNs == EdgeTrain.NEVER ? Double.POSITIVE_INFINITY : nextEdgeNs / NS_PER_S;
    }

    /** Passes all edges that are due at a time. */
    public void passEdges(double timeS) {
        long dueNs = dueNs(timeS);
        if (nextEdgeNs > dueNs) {
            return;
        }
        for (int i = 0; i < timedLoads.length; i++) {
            boolean surgeEnds = timedLoads[i].surgeEndNs() <= dueNs;
            if ((timedLoads[i].cycle.passTo(dueNs) || surgeEnds) && timedLoads[i].wanted) {
                timedCircuits[i].addUp(dueNs);
            }
        }
        findNextEdge();
    }

    /** How often what is fed and wanted has changed: as long as it stands, patterns repeat. */
    public long changes() {
        return changes;
    }

    /** When it last changed (s). */
    public double changedS() {
        return changedS;
    }

    /** Loads with edges or an inrush. */
    public List<LoadState> timedLoads() {
        return List.of(timedLoads);
    }

    /** Whether a timed load is wanted and fed, so that its edges change what is drawn. */
    public boolean isActive(LoadState timed) {
        for (int i = 0; i < timedLoads.length; i++) {
            if (timedLoads[i] == timed) {
                return timed.wanted && !timed.droppedOut && timedCircuits[i].isFed();
            }
        }
        return false;
    }

    /** Arrives at a time with all edges up to there passed, the edges of periodic loads whole periods at once. */
    public void arrive(double timeS) {
        long dueNs = dueNs(timeS);
        if (nextEdgeNs > dueNs) {
            return;
        }
        for (int i = 0; i < timedLoads.length; i++) {
            LoadState timed = timedLoads[i];
            boolean passed = timed.cycle.passTo(dueNs);
            if (timed.wanted && timed.cycle instanceof FlashCycle cycle && timed.surgeNs() > 0 && passed) {
                timed.resume(cycle.lastEdgeNs(), dueNs);
            }
        }
        for (int c = 0; c < circuits.size(); c++) {
            circuits.get(c).addUp(dueNs);
        }
        findNextEdge();
    }

    private void changedAt(double timeS) {
        changes++;
        changedS = timeS;
    }

    private void catchUp(double timeS) {
        changedAt(timeS);
        for (LoadState timed : timedLoads) {
            timed.cycle.passTo(dueNs(timeS));
        }
        circuits.forEach(circuit -> circuit.addUp(dueNs(timeS)));
        findNextEdge();
    }

    private static long dueNs(double timeS) {
        return Math.round(timeS * NS_PER_S) + ONE_INSTANT_NS;
    }

    /** Looks for the next edge that changes anything: loads that no stage wants do not cut the time into steps. */
    private void findNextEdge() {
        nextEdgeNs = EdgeTrain.NEVER;
        for (int i = 0; i < timedLoads.length; i++) {
            if (timedLoads[i].wanted && timedCircuits[i].isFed()) {
                nextEdgeNs = Math.min(nextEdgeNs, timedLoads[i].nextChangeNs());
            }
        }
    }

    /** Longest inrush of all loads that switch by the clock (s). */
    public double longestSurgeS() {
        long longestNs = 0;
        for (LoadState load : timedLoads()) {
            longestNs = Math.max(longestNs, load.surgeNs());
        }
        return longestNs / 1e9;
    }
}

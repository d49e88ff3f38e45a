package curbwatt.engine.simulation.book;

import curbwatt.engine.result.CircuitSummary;
import curbwatt.engine.result.LoadSummary;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.LoadState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.part.Parabola;
import java.util.List;
import java.util.OptionalDouble;

/** Adds up what one circuit lives through. */
final class CircuitBook {

    private final CircuitState state;
    private final int place;
    private OptionalDouble firstLostS = OptionalDouble.empty();
    private String lostBy = "";
    private double disconnectedS;
    private double chargeAs;
    private double peakA;
    private double lowestAtS;
    private double lowestV = Double.POSITIVE_INFINITY;

    CircuitBook(CircuitState state, int place) {
        this.state = state;
        this.place = place;
    }

    void add(double lengthS, OperatingPoint start, OperatingPoint end) {
        if (!state.isFed()) {
            disconnectedS += lengthS;
            return;
        }
        chargeAs += 0.5 * lengthS * (start.circuitA[place] + end.circuitA[place]);
        for (int i = 0; state.hasDropOuts && i < state.loads.size(); i++) {
            LoadState load = state.loads.get(i);
            if (load.droppedOut) {
                load.droppedOutS += lengthS;
            }
        }
    }

    /** Whether an instant on the parabola through three might be one to note. */
    boolean mayNote(OperatingPoint start, OperatingPoint middle, OperatingPoint end) {
        return state.isFed()
                && (Parabola.floor(start.farV[place], middle.farV[place], end.farV[place]) < lowestV
                        || Parabola.ceiling(start.circuitA[place], middle.circuitA[place], end.circuitA[place])
                                > peakA);
    }

    /** Notes an instant. */
    void note(double timeS, OperatingPoint point) {
        if (!state.isFed()) {
            return;
        }
        peakA = Math.max(peakA, point.circuitA[place]);
        if (point.farV[place] < lowestV) {
            lowestV = point.farV[place];
            lowestAtS = timeS;
        }
    }

    /** Notes that the supply was taken away. */
    public void lost(double timeS, String by) {
        if (firstLostS.isEmpty()) {
            firstLostS = OptionalDouble.of(timeS);
            lostBy = by;
        }
    }

    public CircuitSummary summary() {
        return new CircuitSummary(
                state.circuit.name(), firstLostS, lostBy, disconnectedS, chargeAs / 3600, peakA, lowestAtS, lowestV);
    }

    public List<LoadSummary> loads() {
        return state.loads.stream()
                .map(load -> new LoadSummary(
                        load.load.name(),
                        state.circuit.name(),
                        load.dropOuts == 0 ? OptionalDouble.empty() : OptionalDouble.of(load.firstDropOutS),
                        load.dropOuts,
                        load.droppedOutS))
                .toList();
    }
}

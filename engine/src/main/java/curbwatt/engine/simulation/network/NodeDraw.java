package curbwatt.engine.simulation.network;

import curbwatt.engine.simulation.part.CircuitDraw;
import curbwatt.engine.simulation.part.CircuitState;
import java.util.List;

/** What is drawn from one node at a voltage: by its circuits, and as a power asked for elsewhere. */
final class NodeDraw {

    private final List<CircuitState> circuits;
    private double givenW;
    private double circuitsA;
    private double circuitSlopeAPerV;
    private double sumA;
    private double slopeAPerV;
    private CircuitState failedCircuit;

    NodeDraw(List<CircuitState> circuits) {
        this.circuits = circuits;
    }

    /** Asks a power for elsewhere (W). */
    void give(double powerW) {
        givenW = powerW;
    }

    /** Draws at a voltage (V); false: a circuit can't be fed there. */
    boolean at(double nodeV) {
        circuitsA = 0;
        circuitSlopeAPerV = 0;
        for (int c = 0; c < circuits.size(); c++) {
            CircuitDraw draw = circuits.get(c).now;
            if (!draw.solve(nodeV)) {
                failedCircuit = circuits.get(c);
                return false;
            }
            circuitsA += draw.currentA();
            circuitSlopeAPerV += draw.slopeAPerV();
        }
        sumA = circuitsA + givenW / nodeV;
        slopeAPerV = circuitSlopeAPerV - givenW / (nodeV * nodeV);
        return true;
    }

    /** Goes on from the last voltage by a little (V), along all slopes. */
    void follow(double furtherV) {
        for (int c = 0; c < circuits.size(); c++) {
            circuits.get(c).now.follow(furtherV);
        }
        circuitsA += circuitSlopeAPerV * furtherV;
        sumA += slopeAPerV * furtherV;
    }

    /** All that is drawn (A). */
    double sumA() {
        return sumA;
    }

    /** What the circuits draw of it (A). */
    double circuitsA() {
        return circuitsA;
    }

    /** Slope of all that is drawn over the voltage (A/V). */
    double slopeAPerV() {
        return slopeAPerV;
    }

    /** The circuit that could not be fed. */
    CircuitState failedCircuit() {
        return failedCircuit;
    }
}

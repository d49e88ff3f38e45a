package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.Parabola;

/** Lowest and highest of some voltages. */
final class Band {

    private double lowestV = Double.POSITIVE_INFINITY;
    private double highestV = Double.NEGATIVE_INFINITY;

    void clear() {
        lowestV = Double.POSITIVE_INFINITY;
        highestV = Double.NEGATIVE_INFINITY;
    }

    /** Whether a voltage on the parabola through three might lie outside. */
    boolean mayNote(double startV, double middleV, double endV) {
        return Parabola.floor(startV, middleV, endV) < lowestV || Parabola.ceiling(startV, middleV, endV) > highestV;
    }

    void note(double voltageV) {
        lowestV = Math.min(lowestV, voltageV);
        highestV = Math.max(highestV, voltageV);
    }

    double lowestV() {
        return lowestV;
    }

    double highestV() {
        return highestV;
    }
}

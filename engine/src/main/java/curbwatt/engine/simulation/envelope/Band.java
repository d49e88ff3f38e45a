package curbwatt.engine.simulation.envelope;

/** Lowest and highest of some voltages. */
final class Band {

    private double lowestV = Double.POSITIVE_INFINITY;
    private double highestV = Double.NEGATIVE_INFINITY;

    void clear() {
        lowestV = Double.POSITIVE_INFINITY;
        highestV = Double.NEGATIVE_INFINITY;
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

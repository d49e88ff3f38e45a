package curbwatt.engine.simulation;

/** The last solution of the node: voltage and currents that balance, and each circuit's share. */
final class OperatingPoint {

    double nodeV;
    /** Current of the battery's main reaction, discharging counts positive (A). */
    double mainA;
    /** Current that goes into gassing (A). */
    double gasA;

    double alternatorA;
    double loadA;
    double residualA;
    final double[] farV;
    final double[] circuitA;
    final double[] feedLossW;

    OperatingPoint(int circuits) {
        farV = new double[circuits];
        circuitA = new double[circuits];
        feedLossW = new double[circuits];
    }

    double batteryA() {
        return mainA - gasA;
    }

    void takeFrom(OperatingPoint other) {
        mix(other, other, 0);
    }

    /** Becomes the point on the straight line from one solution to another. */
    void mix(OperatingPoint from, OperatingPoint to, double share) {
        nodeV = from.nodeV + share * (to.nodeV - from.nodeV);
        mainA = from.mainA + share * (to.mainA - from.mainA);
        gasA = from.gasA + share * (to.gasA - from.gasA);
        alternatorA = from.alternatorA + share * (to.alternatorA - from.alternatorA);
        loadA = from.loadA + share * (to.loadA - from.loadA);
        residualA = Math.max(from.residualA, to.residualA);
        for (int c = 0; c < farV.length; c++) {
            farV[c] = from.farV[c] + share * (to.farV[c] - from.farV[c]);
            circuitA[c] = from.circuitA[c] + share * (to.circuitA[c] - from.circuitA[c]);
            feedLossW[c] = from.feedLossW[c] + share * (to.feedLossW[c] - from.feedLossW[c]);
        }
    }
}

package curbwatt.engine.simulation;

/** The last solution of one node: a voltage and currents that balance. */
final class NodePoint {

    double nodeV;
    /** Current of the battery's main reaction, discharging counts positive (A). */
    double mainA;
    /** Current that goes into gassing (A). */
    double gasA;
    /** Current from the regulated source: alternator or charger (A). */
    double sourceA;
    /** Current of the node's circuits (A). */
    double loadA;
    /** What Kirchhoff's current law is off by (A). */
    double residualA;
    /** Rise of the node's voltage with a current given to it (Ω). */
    double stiffnessOhm;

    double batteryA() {
        return mainA - gasA;
    }

    /** Becomes the point on the straight line from one solution to another. */
    void mix(NodePoint from, NodePoint to, double share) {
        nodeV = from.nodeV + share * (to.nodeV - from.nodeV);
        mainA = from.mainA + share * (to.mainA - from.mainA);
        gasA = from.gasA + share * (to.gasA - from.gasA);
        sourceA = from.sourceA + share * (to.sourceA - from.sourceA);
        loadA = from.loadA + share * (to.loadA - from.loadA);
        residualA = Math.max(from.residualA, to.residualA);
        stiffnessOhm = to.stiffnessOhm;
    }
}

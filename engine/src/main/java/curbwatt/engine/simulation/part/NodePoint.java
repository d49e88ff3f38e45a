package curbwatt.engine.simulation.part;

/** The last solution of one node: a voltage and currents that balance. */
public final class NodePoint {

    public double nodeV;
    /** Current of the battery's main reaction, discharging counts positive (A). */
    public double mainA;
    /** Current that goes into gassing (A). */
    public double gasA;
    /** Current from the regulated source: alternator or charger (A). */
    public double sourceA;
    /** Current of the node's circuits (A). */
    public double loadA;
    /** What Kirchhoff's current law is off by (A). */
    public double residualA;
    /** Rise of the node's voltage with a current given to it (Ω). */
    public double stiffnessOhm;

    public double batteryA() {
        return mainA - gasA;
    }

    /** Becomes the point on the straight line from one solution to another. */
    public void mix(NodePoint from, NodePoint to, double share) {
        nodeV = from.nodeV + share * (to.nodeV - from.nodeV);
        mainA = from.mainA + share * (to.mainA - from.mainA);
        gasA = from.gasA + share * (to.gasA - from.gasA);
        sourceA = from.sourceA + share * (to.sourceA - from.sourceA);
        loadA = from.loadA + share * (to.loadA - from.loadA);
        residualA = Math.max(from.residualA, to.residualA);
        stiffnessOhm = to.stiffnessOhm;
    }

    /** Becomes the point on the parabola through three solutions. */
    void bend(NodePoint from, NodePoint middle, NodePoint to, Parabola at) {
        bendSensed(from, middle, to, at);
        sourceA = at.through(from.sourceA, middle.sourceA, to.sourceA);
        loadA = at.through(from.loadA, middle.loadA, to.loadA);
        residualA = Math.max(from.residualA, to.residualA);
        stiffnessOhm = to.stiffnessOhm;
    }

    /** The same in what devices sense. */
    void bendSensed(NodePoint from, NodePoint middle, NodePoint to, Parabola at) {
        nodeV = at.through(from.nodeV, middle.nodeV, to.nodeV);
        mainA = at.through(from.mainA, middle.mainA, to.mainA);
        gasA = at.through(from.gasA, middle.gasA, to.gasA);
    }

    /**
     * Guesses the solutions in the middle and at the end of a step that goes on from this one, along the parabola of the step
     * before.
     *
     * @param middle in the middle of the step before; becomes the guess
     * @param end at its start; becomes the guess
     * @param times how many times as long this step is
     */
    void guessAhead(NodePoint middle, NodePoint end, double times) {
        Parabola half = Parabola.at(1 + 0.5 * times);
        Parabola whole = Parabola.at(1 + times);
        double halfV = half.through(end.nodeV, middle.nodeV, nodeV);
        double halfA = half.through(end.mainA, middle.mainA, mainA);
        end.nodeV = whole.through(end.nodeV, middle.nodeV, nodeV);
        end.mainA = whole.through(end.mainA, middle.mainA, mainA);
        middle.nodeV = halfV;
        middle.mainA = halfA;
    }

    /** Becomes nothing, to add to. */
    void clear() {
        nodeV = 0;
        mainA = 0;
        gasA = 0;
        sourceA = 0;
        loadA = 0;
    }

    /** Adds a share of the point on the parabola through three solutions. */
    void addBetween(Parabola at, NodePoint from, NodePoint middle, NodePoint to, double share) {
        nodeV += share * at.through(from.nodeV, middle.nodeV, to.nodeV);
        mainA += share * at.through(from.mainA, middle.mainA, to.mainA);
        gasA += share * at.through(from.gasA, middle.gasA, to.gasA);
        sourceA += share * at.through(from.sourceA, middle.sourceA, to.sourceA);
        loadA += share * at.through(from.loadA, middle.loadA, to.loadA);
    }
}

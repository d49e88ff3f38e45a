package curbwatt.engine.simulation.part;

/** The last solution of the whole network: each node, the link, and each circuit's share. */
public final class OperatingPoint {

    public final NodePoint starter = new NodePoint();
    /** Used only where there is an auxiliary battery. */
    public final NodePoint equipment = new NodePoint();
    /** Current that leaves the starter node through the link (A). */
    public double linkInA;
    /** Current that reaches the equipment node through the link (A). */
    public double linkOutA;

    /** Current of the starter (A). */
    public double starterA;

    public final double[] farV;
    public final double[] circuitA;
    public final double[] feedLossW;

    public OperatingPoint(int circuits) {
        farV = new double[circuits];
        circuitA = new double[circuits];
        feedLossW = new double[circuits];
    }

    /** Current of all circuits (A). */
    public double loadA() {
        return starter.loadA + equipment.loadA;
    }

    /** Current of both batteries, discharging counts positive (A). */
    public double batteriesA() {
        return starter.batteryA() + equipment.batteryA();
    }

    public double residualA() {
        return Math.max(starter.residualA, equipment.residualA);
    }

    /** Heat in the link: what goes in less what comes out (W). */
    public double linkLossW() {
        return starter.nodeV * linkInA - equipment.nodeV * linkOutA;
    }

    public void takeFrom(OperatingPoint other) {
        mix(other, other, 0);
    }

    /** Becomes the point on the straight line from one solution to another. */
    public void mix(OperatingPoint from, OperatingPoint to, double share) {
        starter.mix(from.starter, to.starter, share);
        equipment.mix(from.equipment, to.equipment, share);
        linkInA = from.linkInA + share * (to.linkInA - from.linkInA);
        starterA = from.starterA + share * (to.starterA - from.starterA);
        linkOutA = from.linkOutA + share * (to.linkOutA - from.linkOutA);
        for (int c = 0; c < farV.length; c++) {
            farV[c] = from.farV[c] + share * (to.farV[c] - from.farV[c]);
            circuitA[c] = from.circuitA[c] + share * (to.circuitA[c] - from.circuitA[c]);
            feedLossW[c] = from.feedLossW[c] + share * (to.feedLossW[c] - from.feedLossW[c]);
        }
    }
}

package curbwatt.engine.simulation.part;

import java.util.Arrays;

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

    /** Becomes the point on the parabola through three solutions, at start, middle and end of a step. */
    public void bend(OperatingPoint from, OperatingPoint middle, OperatingPoint to, double share) {
        Parabola at = Parabola.at(share);
        starter.bend(from.starter, middle.starter, to.starter, at);
        equipment.bend(from.equipment, middle.equipment, to.equipment, at);
        linkInA = at.through(from.linkInA, middle.linkInA, to.linkInA);
        linkOutA = at.through(from.linkOutA, middle.linkOutA, to.linkOutA);
        starterA = at.through(from.starterA, middle.starterA, to.starterA);
        for (int c = 0; c < farV.length; c++) {
            farV[c] = at.through(from.farV[c], middle.farV[c], to.farV[c]);
            circuitA[c] = at.through(from.circuitA[c], middle.circuitA[c], to.circuitA[c]);
            feedLossW[c] = at.through(from.feedLossW[c], middle.feedLossW[c], to.feedLossW[c]);
        }
    }

    /** As {@link #bend}, but for nothing else than what devices sense: voltages, and currents of batteries and circuits. */
    public void bendSensed(OperatingPoint from, OperatingPoint middle, OperatingPoint to, double share) {
        Parabola at = Parabola.at(share);
        starter.bendSensed(from.starter, middle.starter, to.starter, at);
        equipment.bendSensed(from.equipment, middle.equipment, to.equipment, at);
        for (int c = 0; c < farV.length; c++) {
            farV[c] = at.through(from.farV[c], middle.farV[c], to.farV[c]);
            circuitA[c] = at.through(from.circuitA[c], middle.circuitA[c], to.circuitA[c]);
        }
    }

    /**
     * Guesses the solutions in the middle and at the end of a step that goes on from this one, along the parabola of the step
     * before.
     *
     * @param middle in the middle of the step before; becomes the guess
     * @param end at its start; becomes the guess
     * @param times how many times as long this step is
     */
    public void guessAhead(OperatingPoint middle, OperatingPoint end, double times) {
        starter.guessAhead(middle.starter, end.starter, times);
        equipment.guessAhead(middle.equipment, end.equipment, times);
    }

    /** Becomes nothing, to add to. */
    public void clear() {
        starter.clear();
        equipment.clear();
        linkInA = 0;
        linkOutA = 0;
        starterA = 0;
        Arrays.fill(farV, 0);
        Arrays.fill(circuitA, 0);
        Arrays.fill(feedLossW, 0);
    }

    /**
     * Adds a share of the point on the parabola through three solutions, or of a mean over a part of it, but for the far ends'
     * voltages and the feeds' losses.
     */
    public void addBetween(Parabola at, OperatingPoint from, OperatingPoint middle, OperatingPoint to, double share) {
        starter.addBetween(at, from.starter, middle.starter, to.starter, share);
        equipment.addBetween(at, from.equipment, middle.equipment, to.equipment, share);
        linkInA += share * at.through(from.linkInA, middle.linkInA, to.linkInA);
        linkOutA += share * at.through(from.linkOutA, middle.linkOutA, to.linkOutA);
        starterA += share * at.through(from.starterA, middle.starterA, to.starterA);
        for (int c = 0; c < circuitA.length; c++) {
            circuitA[c] += share * at.through(from.circuitA[c], middle.circuitA[c], to.circuitA[c]);
        }
    }
}

package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.Network;
import curbwatt.engine.simulation.network.NodeSolver;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.MeanCurrent;
import curbwatt.engine.simulation.part.OperatingPoint;

/** One instant of a long step: the network solved for each combination of lit loads. */
final class Stage {

    final OperatingPoint[] points;
    final MeanCurrent starter = new MeanCurrent();
    final MeanCurrent auxiliary = new MeanCurrent();

    Stage(int combinations, int circuits) {
        points = new OperatingPoint[combinations];
        for (int k = 0; k < combinations; k++) {
            points[k] = new OperatingPoint(circuits);
        }
    }

    /** Solves all combinations for the batteries' states; false: one has no operating point. */
    boolean solve(Network network, FlashPattern pattern, Batteries batteries, EngineState engine, double timeS) {
        network.look(engine, timeS);
        boolean solved = true;
        for (int k = 0; k < points.length && solved; k++) {
            pattern.suppose(k);
            solved = network.solve(batteries, points[k]) == NodeSolver.Outcome.SOLVED;
        }
        pattern.supposeNothing();
        return solved;
    }

    /** Takes another stage's solutions to start from. */
    void guess(Stage other) {
        for (int k = 0; k < points.length; k++) {
            points[k].takeFrom(other.points[k]);
        }
    }

    /** Averages the batteries' currents over the combinations. */
    void average(double[] shares, Batteries batteries) {
        starter.clear(batteries.starter().chargingFactor());
        for (int k = 0; k < points.length; k++) {
            starter.add(shares[k], points[k].starter.mainA);
        }
        if (batteries.areTwo()) {
            auxiliary.clear(batteries.auxiliary().chargingFactor());
            for (int k = 0; k < points.length; k++) {
                auxiliary.add(shares[k], points[k].equipment.mainA);
            }
        }
    }
}

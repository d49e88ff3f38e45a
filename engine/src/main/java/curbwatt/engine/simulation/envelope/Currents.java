package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.DriveCurve;
import curbwatt.engine.simulation.part.NodePoint;

/** The mean currents of both batteries along a long step, and those of the step before, as a guess. */
final class Currents {

    private final DriveCurve starter = new DriveCurve();
    private final DriveCurve auxiliary = new DriveCurve();
    private final DriveCurve starterBefore = new DriveCurve();
    private final DriveCurve auxiliaryBefore = new DriveCurve();

    /** Keeps the present ones as those of the step before. */
    void keep() {
        starterBefore.takeFrom(starter);
        auxiliaryBefore.takeFrom(auxiliary);
    }

    /** Goes on as in the step before, the present one being so many times as long, from what flows at its start. */
    void goOn(Stage start, double times) {
        starter.takeFrom(starterBefore);
        starter.goOn(times);
        starter.beginAt(start.starter);
        auxiliary.takeFrom(auxiliaryBefore);
        auxiliary.goOn(times);
        auxiliary.beginAt(start.auxiliary);
    }

    /** Stays at what flows at the start. */
    void hold(Stage start) {
        starter.hold(start.starter.sumA(), start.starter.driveA());
        auxiliary.hold(start.auxiliary.sumA(), start.auxiliary.driveA());
    }

    /** Goes through what was solved. */
    void fit(Stage start, Stage middle, Stage end) {
        starter.fit(start.starter, middle.starter, end.starter);
        auxiliary.fit(start.auxiliary, middle.auxiliary, end.auxiliary);
    }

    /** Takes batteries' charges to where they are after these have flowed from a state on, for a share of the step. */
    void flow(Batteries start, Batteries state, double share, double lengthS) {
        state.advanceFrom(start, starter, auxiliary, share, lengthS);
    }

    static double outOfReachAh(BatteryWork battery) {
        return battery.removedAh() + battery.totalBoundAh();
    }

    /** How far a node's voltage bends on its parabola (V). */
    static double bendV(NodePoint start, NodePoint middle, NodePoint end) {
        return Math.abs(start.nodeV - 2 * middle.nodeV + end.nodeV);
    }
}

package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;

/** The batteries at the middle and the end of a long step, moved there by the mean currents along it. */
final class MovedBatteries {

    final Batteries start;
    final Batteries middle;
    final Batteries end;
    private final Batteries between;
    private final Currents currents = new Currents();
    private final EngineState engine;
    private double startS;
    private double lengthS;

    MovedBatteries(Batteries batteries, EngineState engine) {
        this.engine = engine;
        start = batteries;
        middle = batteries.copy();
        end = batteries.copy();
        between = batteries.copy();
    }

    /** Keeps the present currents as those of the step before. */
    void keepCurrents() {
        currents.keep();
    }

    /**
     * Moves them by what is to be expected.
     *
     * @param timesAsLong how many times as long this step is as the one it goes on from; 0: it goes on from none
     */
    void guess(double fromS, double durationS, Stage first, double timesAsLong) {
        startS = fromS;
        lengthS = durationS;
        if (timesAsLong > 0) {
            currents.goOn(first, timesAsLong);
        } else {
            currents.hold(first);
        }
        move(middle, 0.5);
        move(end, 1);
    }

    /** Moves them by what was solved; share of its capacity by which a battery's end is elsewhere than before. */
    double fit(Stage first, Stage half, Stage last) {
        double before = Currents.outOfReachAh(end.starter());
        double beforeX = start.areTwo() ? Currents.outOfReachAh(end.auxiliary()) : 0;
        currents.fit(first, half, last);
        moveCharges(middle, 0.5);
        moveCharges(end, 1);
        double movedShare = movedShare(end.starter(), before);
        return start.areTwo() ? Math.max(movedShare, movedShare(end.auxiliary(), beforeX)) : movedShare;
    }

    private static double movedShare(BatteryWork battery, double beforeAh) {
        return Math.abs(Currents.outOfReachAh(battery) - beforeAh) / battery.battery.capacityAh();
    }

    /**
     * Whether one becomes full, or ceases to be: a full battery stops charging in an instant, and no parabola goes past that.
     * One that begins full and only discharges has nothing to stop.
     */
    boolean passFull(Stage first) {
        boolean starterPasses = start.starter().isFull() != end.starter().isFull();
        boolean auxiliaryPasses =
                start.areTwo() && start.auxiliary().isFull() != end.auxiliary().isFull();
        boolean starterCharges = false;
        boolean auxiliaryCharges = false;
        for (OperatingPoint point : first.points) {
            starterCharges |= point.starter.mainA <= 0;
            auxiliaryCharges |= point.equipment.mainA <= 0;
        }
        return (starterPasses && (end.starter().isFull() || starterCharges))
                || (auxiliaryPasses && (end.auxiliary().isFull() || auxiliaryCharges));
    }

    /** The batteries at a share of the step; valid until asked again. */
    Batteries at(double share) {
        move(between, share);
        return between;
    }

    private void move(Batteries state, double share) {
        state.takeFrom(start);
        warm(state, share);
        moveCharges(state, share);
    }

    /** In two halves, each in the air of its middle: under a hood it may get warmer by some degrees in a step. */
    private void warm(Batteries state, double share) {
        double durationS = share * lengthS;
        double firstS = startS + 0.25 * durationS;
        double laterS = startS + 0.75 * durationS;
        state.warm(
                engine.airC(firstS),
                engine.underHoodC(firstS),
                engine.airC(laterS),
                engine.underHoodC(laterS),
                durationS);
    }

    /** Moves what the currents move; their warming, which does not depend on them, was found before. */
    private void moveCharges(Batteries state, double share) {
        currents.flow(start, state, share, lengthS);
    }
}

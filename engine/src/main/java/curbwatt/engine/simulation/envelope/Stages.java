package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.OperatingPoint;

/**
 * What was solved at the start, in the middle and at the end of a long step, and the parabolas through it. A step that goes on
 * from another begins with its end, and looks for its own solutions where the last ones lead to.
 */
final class Stages {

    private final int circuits;
    Stage start;
    Stage middle;
    Stage end;
    /** Whether middle and end still hold what was solved for the step before. */
    private boolean holdLast;

    Stages(int circuits) {
        this.circuits = circuits;
        makeRoom(0);
    }

    /** Makes room for so many combinations. */
    void makeRoom(int combinations) {
        if (start == null || start.points.length != combinations) {
            start = new Stage(combinations, circuits);
            middle = new Stage(combinations, circuits);
            end = new Stage(combinations, circuits);
        }
    }

    /** Begins a step where the last one ended. */
    void goOn() {
        Stage old = start;
        start = end;
        end = old;
        holdLast = true;
    }

    /** Lets a solution near by be where the start is looked for. */
    void guessStart(OperatingPoint guess) {
        for (OperatingPoint point : start.points) {
            point.takeFrom(guess);
        }
    }

    /** Lets the others be looked for where the start is. */
    void guessAlike() {
        middle.guess(start);
        end.guess(start);
        holdLast = false;
    }

    /**
     * Lets the others be looked for where those of the step before lead to, if these are still at hand.
     *
     * @param times how many times as long this step is
     */
    void guessAhead(double times) {
        if (!holdLast) {
            return;
        }
        holdLast = false;
        for (int k = 0; k < start.points.length; k++) {
            start.points[k].guessAhead(middle.points[k], end.points[k], times);
        }
    }

    /** Fills in what holds in a combination at a share of the step. */
    void at(int combination, double share, OperatingPoint point) {
        point.bend(start.points[combination], middle.points[combination], end.points[combination], share);
    }

    /** Fills in what devices sense in a combination at a share of the step. */
    void sensedAt(int combination, double share, OperatingPoint point) {
        point.bendSensed(start.points[combination], middle.points[combination], end.points[combination], share);
    }

    /** The combination whose voltage bends most. */
    int bentMost() {
        int bent = 0;
        double mostV = -1;
        for (int k = 0; k < start.points.length; k++) {
            double bendV = Currents.bendV(start.points[k].starter, middle.points[k].starter, end.points[k].starter)
                    + Currents.bendV(start.points[k].equipment, middle.points[k].equipment, end.points[k].equipment);
            if (bendV > mostV) {
                bent = k;
                mostV = bendV;
            }
        }
        return bent;
    }
}

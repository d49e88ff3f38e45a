package curbwatt.engine.simulation;

import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.network.Network;
import curbwatt.engine.simulation.network.NodeSolver;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Optional;

/**
 * One step of the whole vehicle: its start and its end solved, its length found, the batteries moved.
 *
 * <p>A step is tried with the currents at its start, solved again at its end, and taken with the mean.
 */
final class Stepping {

    final Batteries batteries;
    final OperatingPoint start;
    final OperatingPoint end;
    private final OperatingPoint middle;
    private final Network network;
    private final Batteries trial;
    private final EngineState engine;
    private final StepControl control;
    private double proposedS = 1;

    Stepping(
            Vehicle vehicle,
            Scene scene,
            StepControl control,
            LoadBank bank,
            EngineState engine,
            Optional<LinkState> link) {
        this.control = control;
        this.engine = engine;
        batteries = new Batteries(vehicle, scene.start());
        trial = batteries.copy();
        network = new Network(bank.circuits, link.orElse(null));
        start = new OperatingPoint(bank.circuits.size());
        end = new OperatingPoint(bank.circuits.size());
        middle = new OperatingPoint(bank.circuits.size());
        end.starter.nodeV = batteries.starter().idleV();
        end.equipment.nodeV = batteries.areTwo() ? batteries.auxiliary().idleV() : 0;
    }

    Network network() {
        return network;
    }

    /** Solves the start of a step at a time. */
    NodeSolver.Outcome solveStart(double timeS) {
        return network.solve(batteries, engine, timeS, start);
    }

    /** Finds a step short enough to be exact, and solves its end (s). */
    double tryFrom(double timeS, double longestS) {
        double lengthS = Math.min(longestS, proposedS);
        while (true) {
            boolean solved = solveEnd(timeS, lengthS);
            double used = solved ? used(timeS, lengthS) : Double.POSITIVE_INFINITY;
            if (used <= 1 || lengthS <= StepControl.SHORTEST_S) {
                if (!solved) {
                    end.takeFrom(start);
                }
                if (lengthS == proposedS || used > StepControl.MAY_GROW) {
                    proposedS = control.next(lengthS, used);
                }
                return lengthS;
            }
            lengthS = Math.max(StepControl.SHORTEST_S, lengthS * Math.max(0.1, Math.min(0.5, 0.8 / used)));
            proposedS = lengthS;
        }
    }

    /** Share of what is allowed that the step uses, by what changes in it; if that is too much, by how straight it runs. */
    private double used(double timeS, double lengthS) {
        double moved = control.usedByCharge(lengthS, start.starter, end.starter, capacityAh(batteries.starter()));
        double changed = control.usedByChange(start.starter, end.starter);
        if (batteries.areTwo()) {
            moved = Math.max(
                    moved,
                    control.usedByCharge(lengthS, start.equipment, end.equipment, capacityAh(batteries.auxiliary())));
            changed = Math.max(changed, control.usedByChange(start.equipment, end.equipment));
        }
        if (moved > 1 || changed < StepControl.MAY_GROW) {
            return Math.max(moved, changed);
        }
        double bent = changed <= StepControl.MOST_CHANGES && solve(timeS, 0.5 * lengthS, middle)
                ? Math.max(
                        control.usedByBend(start.starter, middle.starter, end.starter),
                        control.usedByBend(start.equipment, middle.equipment, end.equipment))
                : Double.POSITIVE_INFINITY;
        return Math.max(moved, Math.min(changed, Math.max(bent, changed / StepControl.MOST_CHANGES)));
    }

    private static double capacityAh(BatteryWork work) {
        return work.battery.capacityAh();
    }

    /** Solves the end of a step; false: it has no operating point. */
    boolean solveEnd(double timeS, double lengthS) {
        return solve(timeS, lengthS, end);
    }

    private boolean solve(double timeS, double lengthS, OperatingPoint solution) {
        trial.takeFrom(batteries);
        trial.advance(start, lengthS);
        solution.takeFrom(start);
        // a hair before the end: a switching at the end belongs to the next step
        return network.solve(trial, engine, Math.max(timeS, timeS + lengthS - 2e-6), solution)
                == NodeSolver.Outcome.SOLVED;
    }

    /** Cuts the step to a share of itself. */
    void cut(double share) {
        end.mix(start, end, share);
    }

    /** Takes the step: moves the batteries' charge. */
    void take(double lengthS) {
        batteries.advance(start, end, lengthS);
    }

    double starterCharge() {
        return batteries.starter().stateOfChargeFraction();
    }

    double endV() {
        return end.starter.nodeV;
    }
}

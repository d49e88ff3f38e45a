package curbwatt.engine.simulation;

import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.vehicle.BusNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Solves the whole network: one node, or two nodes and their link.
 *
 * <p>With a path between the nodes the unknown is its current J, positive from S to X:
 *
 * <pre>
 *   g(J) = V_S(−J) − V_X(+J) − V_forward − R J,   g(J) = 0
 * </pre>
 *
 * <p>The voltage of S falls and that of X rises with J, so g falls: one root, found by Newton's method inside a
 * bracket. A
 * one-way path rests at J = 0 if g(0) is not above zero. A charger makes X a node with a regulated source, and asks
 * its power
 * of S.
 */
final class Network {

    private static final int MOST_ITERATIONS = 100;
    private static final double TOLERANCE_V = 1e-10;
    private static final double TOLERANCE_A = 1e-10;
    /** More than any vehicle link carries: the bracket's first ends (A). */
    private static final double FAR_A = 5000;

    private final List<CircuitState> circuits;
    private final NodeSolver starterSolver;
    private final NodeSolver equipmentSolver;
    private final LinkState link;
    private CircuitState failedCircuit;
    private BusNode failedNode = BusNode.STARTER;

    /** A network; without an auxiliary battery the link is null. */
    Network(List<CircuitState> circuits, LinkState link) {
        this.circuits = circuits;
        this.link = link;
        starterSolver = new NodeSolver(on(circuits, BusNode.STARTER));
        equipmentSolver = new NodeSolver(on(circuits, BusNode.EQUIPMENT));
    }

    private static List<CircuitState> on(List<CircuitState> circuits, BusNode node) {
        List<CircuitState> own = new ArrayList<>(circuits);
        own.removeIf(circuit -> circuit.circuit.node() != node);
        return List.copyOf(own);
    }

    CircuitState failedCircuit() {
        return failedCircuit;
    }

    /** The node whose solution failed, after a collapse of a node. */
    BusNode failedNode() {
        return failedNode;
    }

    /** Solves for the batteries' states; {@code guess} is where to start from and is filled in. */
    NodeSolver.Outcome solve(Batteries batteries, EngineState engine, double timeS, OperatingPoint guess) {
        double alternatorMaxA = engine.alternatorMaxA(timeS);
        double setPointV = engine.setPointV(timeS);
        guess.starterA = engine.starterA(timeS);
        NodeSolver.Outcome outcome;
        if (link == null) {
            outcome = starter(batteries, alternatorMaxA, setPointV, 0, 0, guess);
        } else if (link.isPath()) {
            outcome = path(batteries, alternatorMaxA, setPointV, guess);
        } else {
            outcome = apart(batteries, alternatorMaxA, setPointV, guess);
        }
        if (outcome == NodeSolver.Outcome.SOLVED) {
            for (int c = 0; c < circuits.size(); c++) {
                CircuitDraw draw = circuits.get(c).now;
                guess.farV[c] = draw.farV();
                guess.circuitA[c] = draw.currentA();
                guess.feedLossW[c] = draw.feedLossW();
            }
        }
        return outcome;
    }

    private NodeSolver.Outcome apart(
            Batteries batteries, double alternatorMaxA, double setPointV, OperatingPoint point) {
        double chargerMaxA = 0;
        double outputV = 0;
        double efficiency = 1;
        if (link.isCharger()) {
            BatteryLink.DcDcCharger charger = link.charger();
            chargerMaxA = charger.limitA();
            outputV = charger.outputV();
            efficiency = charger.efficiencyFraction();
        }
        NodeSolver.Outcome outcome = equipment(batteries, chargerMaxA, outputV, 0, point);
        if (outcome != NodeSolver.Outcome.SOLVED) {
            return outcome;
        }
        point.linkOutA = point.equipment.sourceA;
        double askedW = point.equipment.nodeV * point.linkOutA / efficiency;
        outcome = starter(batteries, alternatorMaxA, setPointV, 0, askedW, point);
        point.linkInA = askedW / point.starter.nodeV;
        return outcome;
    }

    private NodeSolver.Outcome path(
            Batteries batteries, double alternatorMaxA, double setPointV, OperatingPoint point) {
        if (!batteries.auxiliary().takesCharge() && floating(batteries, alternatorMaxA, setPointV, point)) {
            return NodeSolver.Outcome.SOLVED;
        }
        double leastA = link.isTwoWay() ? -FAR_A : 0;
        double mostA = FAR_A;
        double currentA = Math.max(leastA, point.linkOutA);
        boolean triedRest = false;
        NodeSolver.Outcome outcome = NodeSolver.Outcome.NODE_COLLAPSED;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            outcome = equipment(batteries, 0, 0, currentA, point);
            if (outcome != NodeSolver.Outcome.SOLVED) {
                // X needs more than this
                leastA = currentA;
                currentA = 0.5 * (leastA + mostA);
            } else {
                outcome = starter(batteries, alternatorMaxA, setPointV, -currentA, 0, point);
                if (outcome != NodeSolver.Outcome.SOLVED) {
                    mostA = currentA;
                    currentA = 0.5 * (leastA + mostA);
                } else {
                    double excessV = point.starter.nodeV
                            - point.equipment.nodeV
                            - link.forwardV()
                            - link.resistanceOhm() * currentA;
                    boolean blocked = currentA == 0 && !link.isTwoWay() && excessV <= 0;
                    if (Math.abs(excessV) < TOLERANCE_V || blocked) {
                        break;
                    }
                    if (excessV > 0) {
                        leastA = currentA;
                    } else {
                        mostA = currentA;
                    }
                    double stiffnessOhm =
                            point.starter.stiffnessOhm + point.equipment.stiffnessOhm + link.resistanceOhm();
                    double nextA = currentA + excessV / stiffnessOhm;
                    if (nextA <= 0 && !link.isTwoWay() && !triedRest) {
                        triedRest = true;
                        currentA = 0;
                    } else {
                        currentA = nextA > leastA && nextA < mostA ? nextA : 0.5 * (leastA + mostA);
                    }
                }
            }
            if (mostA - leastA < 1e-9) {
                break;
            }
        }
        point.linkInA = currentA;
        point.linkOutA = currentA;
        return outcome;
    }

    /**
     * Tries a battery at X that takes nothing: the node floats at what comes through the link, and the link carries
     * what the
     * circuits draw. True if that holds, which it does as long as the battery does not have to give.
     */
    private boolean floating(Batteries batteries, double alternatorMaxA, double setPointV, OperatingPoint point) {
        double currentA = Math.max(0, point.equipment.loadA);
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            NodeSolver.Outcome outcome = starter(batteries, alternatorMaxA, setPointV, -currentA, 0, point);
            double nodeV = point.starter.nodeV - link.forwardV() - link.resistanceOhm() * currentA;
            boolean gives = batteries.auxiliary().mayDischarge()
                    && nodeV < batteries.auxiliary().idleV();
            if (outcome != NodeSolver.Outcome.SOLVED || gives || nodeV < NodeSolver.FLOOR_V) {
                return false;
            }
            double drawnA = equipmentSolver.floatAt(nodeV, point.equipment);
            if (Math.abs(drawnA - currentA) < TOLERANCE_A) {
                point.linkInA = drawnA;
                point.linkOutA = drawnA;
                return true;
            }
            currentA = drawnA;
        }
        return false;
    }

    private NodeSolver.Outcome starter(
            Batteries batteries,
            double alternatorMaxA,
            double setPointV,
            double givenA,
            double askedW,
            OperatingPoint point) {
        starterSolver.give(givenA - point.starterA, askedW);
        return noted(
                starterSolver.solve(batteries.starter(), alternatorMaxA, setPointV, point.starter),
                starterSolver,
                BusNode.STARTER);
    }

    private NodeSolver.Outcome equipment(
            Batteries batteries, double sourceMaxA, double setPointV, double givenA, OperatingPoint point) {
        equipmentSolver.give(givenA, 0);
        return noted(
                equipmentSolver.solve(batteries.auxiliary(), sourceMaxA, setPointV, point.equipment),
                equipmentSolver,
                BusNode.EQUIPMENT);
    }

    private NodeSolver.Outcome noted(NodeSolver.Outcome outcome, NodeSolver solver, BusNode node) {
        if (outcome == NodeSolver.Outcome.CIRCUIT_COLLAPSED) {
            failedCircuit = solver.failedCircuit();
        } else if (outcome == NodeSolver.Outcome.NODE_COLLAPSED) {
            failedNode = node;
        }
        return outcome;
    }
}

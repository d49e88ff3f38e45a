package curbwatt.engine.simulation.network;

import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.CircuitDraw;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.vehicle.BusNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Solves the whole network: one node, or two nodes and their link.
 *
 * <p>With a path between the nodes the unknown is the voltage of X. At a voltage X says in closed form what current J
 * it
 * asks through the link, positive from S to X; S is solved for giving that; what is left over of the link's own law
 * says
 * whether the voltage is too low or too high:
 *
 * <pre>
 *   h(V_X) = V_S(−J(V_X)) − V_X − V_forward − R J(V_X),   h(V_X) = 0
 * </pre>
 *
 * <p>h falls: one root, found by Newton's method inside a bracket. With J as unknown it would not be so: near full,
 * constant
 * power at X has two voltages for one current. A one-way path rests at J = 0 if the voltages at rest do not open it. A
 * charger makes X a node with a regulated source, and asks its power of S.
 */
public final class Network {

    private static final int MOST_ITERATIONS = 100;
    private static final double TOLERANCE_V = 1e-10;
    private static final double TOLERANCE_A = 1e-10;
    /** Voltages nearer than this are one: the step at which gassing begins hides between them (V). */
    private static final double SAME_V = 1e-12;
    /** More than any 12 V node reaches: the upper end of the search (V). */
    private static final double HIGHEST_V = 25;

    private final List<CircuitState> circuits;
    private final NodeSolver starterSolver;
    private final NodeSolver equipmentSolver;
    private final LinkState link;
    private double alternatorMaxA;
    private double setPointV;
    private double starterA;
    private CircuitState failedCircuit;
    private BusNode failedNode = BusNode.STARTER;

    /** A network; without an auxiliary battery the link is null. */
    public Network(List<CircuitState> circuits, LinkState link) {
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

    public CircuitState failedCircuit() {
        return failedCircuit;
    }

    /** The node whose solution failed, after a collapse of a node. */
    public BusNode failedNode() {
        return failedNode;
    }

    /** Solves for the batteries' states; {@code guess} is where to start from and is filled in. */
    public NodeSolver.Outcome solve(Batteries batteries, EngineState engine, double timeS, OperatingPoint guess) {
        look(engine, timeS);
        return solve(batteries, guess);
    }

    /** Looks at what alternator and starter do at a time. */
    public void look(EngineState engine, double timeS) {
        alternatorMaxA = engine.alternatorMaxA(timeS);
        setPointV = engine.setPointV(timeS);
        starterA = engine.starterA(timeS);
    }

    /** Solves for the batteries' states with alternator and starter as they were last looked at. */
    public NodeSolver.Outcome solve(Batteries batteries, OperatingPoint guess) {
        guess.starterA = starterA;
        NodeSolver.Outcome outcome;
        if (link == null) {
            outcome = starter(batteries, 0, 0, guess);
        } else if (link.isPath()) {
            outcome = path(batteries, guess);
        } else {
            outcome = apart(batteries, guess);
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

    private NodeSolver.Outcome apart(Batteries batteries, OperatingPoint point) {
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
        outcome = starter(batteries, 0, askedW, point);
        point.linkInA = askedW / point.starter.nodeV;
        return outcome;
    }

    /**
     * A path: the voltage of X that obeys the link's law. At each trial voltage X says what it asks through the link,
     * S is
     * solved for giving that, and the law says whether the voltage is too low or too high.
     */
    private NodeSolver.Outcome path(Batteries batteries, OperatingPoint point) {
        double lowV = NodeSolver.FLOOR_V;
        if (!link.isTwoWay()) {
            NodeSolver.Outcome alone = atRest(batteries, point);
            if (alone == NodeSolver.Outcome.SOLVED) {
                if (point.starter.nodeV - point.equipment.nodeV <= link.forwardV()) {
                    return alone;
                }
                lowV = point.equipment.nodeV;
            }
        }
        double highV = HIGHEST_V;
        double guessV = point.equipment.nodeV > lowV
                ? point.equipment.nodeV
                : batteries.auxiliary().idleV();
        double nodeV = Math.max(lowV, Math.min(highV, guessV));
        NodeSolver.Outcome outcome = NodeSolver.Outcome.NODE_COLLAPSED;
        for (int i = 0; i < MOST_ITERATIONS && highV - lowV > SAME_V; i++) {
            double askedA = equipmentSolver.askedAt(nodeV, batteries.auxiliary(), point.equipment);
            double slope = equipmentSolver.askedSlopeAPerV(point.equipment);
            outcome = askedA == Double.POSITIVE_INFINITY
                    ? NodeSolver.Outcome.CIRCUIT_COLLAPSED
                    : starter(batteries, -askedA, 0, point);
            double excessV = point.starter.nodeV - nodeV - link.forwardV() - link.resistanceOhm() * askedA;
            // S fails where X gives it too much or asks too much of it
            boolean tooLow = outcome == NodeSolver.Outcome.SOLVED
                    ? excessV > 0
                    : askedA < 0 || askedA == Double.POSITIVE_INFINITY;
            double fall = 1 + (point.starter.stiffnessOhm + link.resistanceOhm()) * slope;
            if (outcome == NodeSolver.Outcome.SOLVED && Math.abs(excessV) < TOLERANCE_V * Math.max(1, fall)) {
                point.linkInA = askedA;
                point.linkOutA = askedA;
                return outcome;
            }
            if (tooLow) {
                lowV = nodeV;
            } else {
                highV = nodeV;
            }
            boolean halves = i >= NodeSolver.PATIENCE && i % 3 == 0;
            double nextV =
                    outcome == NodeSolver.Outcome.SOLVED && fall > 0 && !halves ? nodeV + excessV / fall : Double.NaN;
            nodeV = nextV > lowV && nextV < highV ? nextV : 0.5 * (lowV + highV);
        }
        return nodeV - NodeSolver.FLOOR_V < 1e-6 ? collapsedAtX(point, nodeV) : resting(batteries, nodeV, point);
    }

    private NodeSolver.Outcome atRest(Batteries batteries, OperatingPoint point) {
        NodeSolver.Outcome outcome = equipment(batteries, 0, 0, 0, point);
        if (outcome == NodeSolver.Outcome.SOLVED) {
            outcome = starter(batteries, 0, 0, point);
            point.linkInA = 0;
            point.linkOutA = 0;
        }
        return outcome;
    }

    private NodeSolver.Outcome collapsedAtX(OperatingPoint point, double nodeV) {
        point.equipment.nodeV = nodeV;
        failedNode = BusNode.EQUIPMENT;
        return NodeSolver.Outcome.NODE_COLLAPSED;
    }

    /**
     * The voltage lies where the battery of X neither gives nor takes: its gassing, which begins there with a step,
     * takes what
     * the link brings beyond the circuits' current.
     */
    private NodeSolver.Outcome resting(Batteries batteries, double nodeV, OperatingPoint point) {
        double lowA = equipmentSolver.askedAt(nodeV - SAME_V, batteries.auxiliary(), point.equipment);
        double highA = equipmentSolver.askedAt(nodeV + SAME_V, batteries.auxiliary(), point.equipment);
        NodeSolver.Outcome outcome = NodeSolver.Outcome.NODE_COLLAPSED;
        double currentA = lowA;
        while (highA - lowA > TOLERANCE_A) {
            currentA = 0.5 * (lowA + highA);
            outcome = starter(batteries, -currentA, 0, point);
            double excessV = point.starter.nodeV - nodeV - link.forwardV() - link.resistanceOhm() * currentA;
            if (outcome == NodeSolver.Outcome.SOLVED && excessV > 0) {
                lowA = currentA;
            } else {
                highA = currentA;
            }
        }
        point.equipment.nodeV = nodeV;
        point.equipment.mainA = 0;
        point.equipment.gasA = currentA - point.equipment.loadA;
        point.equipment.sourceA = 0;
        point.linkInA = currentA;
        point.linkOutA = currentA;
        return outcome;
    }

    private NodeSolver.Outcome starter(Batteries batteries, double givenA, double askedW, OperatingPoint point) {
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

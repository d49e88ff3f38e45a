package curbwatt.engine.simulation.network;

import curbwatt.engine.battery.Terminal;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.NodePoint;
import java.util.List;

/**
 * Solves one node: battery, a regulated source, a given current and the node's circuits under one voltage.
 *
 * <p>The unknown is the current I of the battery's main reaction, because everything else is explicit in it:
 *
 * <pre>
 *   f(I) = I − I_gas(V) + I_source + I_given − I_loads(V) − P/V,   V = V_battery(I),   f(I) = 0
 * </pre>
 *
 * <p>f starts below zero at no current and rises; with constant-power loads it turns back beyond the most that battery
 * and feeds can deliver. Newton's method from below finds the first root, the one with the high voltage. If f turns, or the
 * voltage falls under the floor, before it has reached zero, there is no operating point.
 *
 * <p>The regulator is tried first: if the source can hold its set-point, the voltage is known and only the battery's
 * current at that voltage is asked for. Otherwise the source gives its largest current.
 *
 * <p>Gassing flows only while the main reaction does not discharge; in the narrow range where a surplus is smaller
 * than the gassing current, the main reaction rests and gassing takes the surplus.
 */
public final class NodeSolver {

    /**
     * Voltage below which a 12 V node counts as collapsed (V): 1 V a cell, the end of the long EN 60095-1 start test.
     */
    static final double FLOOR_V = 6;

    /** More than any battery reaches by gassing (V). */
    private static final double CEILING_V = 40;

    private static final int MOST_ITERATIONS = 80;
    /** Steps after which every third halves the bracket: Newton's method may run to and fro across a bend for ever. */
    static final int PATIENCE = 9;

    private static final double TOLERANCE_A = 4e-12;
    /** So near that the rest of the way is straight: all curves are left by less than the tolerance. */
    private static final double NEARLY_A = 2e-7;
    /** Share of the last good voltage at which a circuit on the verge of its own collapse has collapsed. */
    private static final double NEAR_FRACTION = 0.98;

    private final NodeDraw drawn;
    private Terminal terminal;
    private double openV;
    private double idleV;
    private double surface;
    private double chargingSurface;
    private boolean mayDischarge;
    private double givenA;

    public NodeSolver(List<CircuitState> circuits) {
        drawn = new NodeDraw(circuits);
    }

    /** How a solve ended. */
    public enum Outcome {
        SOLVED,
        /** A circuit can't be fed: {@link #failedCircuit()} says which. */
        CIRCUIT_COLLAPSED,
        /** The node itself has no operating point. */
        NODE_COLLAPSED
    }

    public CircuitState failedCircuit() {
        return drawn.failedCircuit();
    }

    /** Gives the node a current from elsewhere (A), and asks a power of it for elsewhere (W), in the next solves. */
    public void give(double currentA, double askedW) {
        givenA = currentA;
        drawn.give(askedW);
    }

    /**
     * Solves for a battery state.
     *
     * @param sourceMaxA largest current of the regulated source; 0: there is none
     * @param setPointV voltage that the source holds
     * @param guess solution to start from and to fill in
     */
    public Outcome solve(BatteryWork battery, double sourceMaxA, double setPointV, NodePoint guess) {
        look(battery);
        double guessA = guess.mainA;
        double sourceA = 0;
        if (sourceMaxA > 0) {
            double askedA = regulate(setPointV, guess);
            if (askedA >= 0 && askedA <= sourceMaxA) {
                return Outcome.SOLVED;
            }
            sourceA = askedA < 0 ? 0 : sourceMaxA;
        }
        // mostly the battery gives what it gave, or nearly: no need to ask first whether it gives at all
        if (guessA > 0 && mayDischarge && discharging(guessA, sourceA, guess) == Outcome.SOLVED) {
            return Outcome.SOLVED;
        }
        if (!drawn.at(idleV)) {
            return Outcome.CIRCUIT_COLLAPSED;
        }
        double surplusA = sourceA + givenA - drawn.sumA();
        if (surplusA < 0) {
            return mayDischarge ? discharging(-surplusA, sourceA, guess) : Outcome.NODE_COLLAPSED;
        }
        if (surplusA <= terminal.gassingA(idleV)) {
            return accept(guess, idleV, 0, surplusA, sourceA, -chargingSlope());
        }
        return chargingSurface >= 1 ? gassingAlone(sourceA, guess) : charging(Math.min(guess.mainA, 0), sourceA, guess);
    }

    /**
     * Fills in the point at the set-point, and says what it asks of the source (A); infinity: a feed would collapse.
     */
    private double regulate(double setPointV, NodePoint point) {
        if (!drawn.at(setPointV)) {
            return Double.POSITIVE_INFINITY;
        }
        boolean charges = idleV < setPointV;
        double mainA = currentAt(setPointV, charges, point.mainA);
        double gasA = charges ? terminal.gassingA(setPointV) : 0;
        accept(point, setPointV, mainA, gasA, drawn.sumA() - givenA - mainA + gasA, 0);
        return point.sourceA;
    }

    /** Main current at which the battery has a voltage; V falls with I, so Newton needs only to stay on its branch. */
    private double currentAt(double targetV, boolean charges, double guessA) {
        if (charges ? chargingSurface >= 1 : (!mayDischarge || openV == Double.NEGATIVE_INFINITY)) {
            return 0;
        }
        double mainA = charges == guessA < 0 ? guessA : 0;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            double slope = charges && mainA == 0 ? chargingSlope() : slope(mainA);
            double changeA = (targetV - voltageV(mainA)) / slope;
            mainA = charges ? Math.min(mainA + changeA, 0) : Math.max(mainA + changeA, 0);
            if (Math.abs(changeA) < TOLERANCE_A) {
                break;
            }
        }
        return mainA;
    }

    private double chargingSlope() {
        return slope(-Double.MIN_NORMAL);
    }

    private Outcome discharging(double startA, double sourceA, NodePoint point) {
        double mainA = startA;
        double belowA = 0;
        double beyondA = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_ITERATIONS && beyondA - belowA > 1e-6; i++) {
            double nodeV = voltageV(mainA);
            double batterySlope = slope(mainA);
            double slope = nodeV >= FLOOR_V && drawn.at(nodeV) ? 1 - drawn.slopeAPerV() * batterySlope : 0;
            if (slope <= 0) {
                // past the fold, or a step too long: the root, if there is one, lies before
                beyondA = mainA;
                mainA = 0.5 * (belowA + beyondA);
                continue;
            }
            double missingA = mainA + sourceA + givenA - drawn.sumA();
            if (Math.abs(missingA) < NEARLY_A) {
                double restA = -missingA / slope;
                drawn.follow(restA * batterySlope);
                return accept(point, nodeV + restA * batterySlope, mainA + restA, 0, sourceA, -batterySlope / slope);
            }
            if (missingA < 0) {
                belowA = Math.max(belowA, mainA);
            } else if (mainA == 0) {
                return Outcome.NODE_COLLAPSED;
            }
            double nextA = Math.max(0, mainA - missingA / slope);
            mainA = nextA < beyondA ? nextA : 0.5 * (belowA + beyondA);
        }
        // a circuit that a trifle less would cut off is at fault, not the node
        return drawn.at(NEAR_FRACTION * voltageV(belowA)) ? Outcome.NODE_COLLAPSED : Outcome.CIRCUIT_COLLAPSED;
    }

    private Outcome charging(double startA, double sourceA, NodePoint point) {
        double mainA = startA;
        double leastA = -(sourceA + givenA);
        double mostA = 0;
        // halvings alone may have to find a microampere in a hundred amperes
        for (int i = 0; i < 3 * MOST_ITERATIONS; i++) {
            double nodeV = voltageV(Math.min(mainA, 0));
            if (!drawn.at(nodeV)) {
                return Outcome.CIRCUIT_COLLAPSED;
            }
            double gasA = terminal.gassingA(nodeV);
            double missingA = mainA - gasA + sourceA + givenA - drawn.sumA();
            double batterySlope = mainA < 0 ? slope(mainA) : chargingSlope();
            double slope = 1 - (terminal.gassingSlopeAPerV(nodeV) + drawn.slopeAPerV()) * batterySlope;
            if (Math.abs(missingA) < TOLERANCE_A * (1 + sourceA + Math.abs(givenA))) {
                return accept(point, nodeV, mainA, gasA, sourceA, -batterySlope / slope);
            }
            if (missingA < 0) {
                leastA = mainA;
            } else {
                mostA = mainA;
            }
            double nextA = mainA - missingA / slope;
            boolean halves = i >= PATIENCE && i % 3 == 0;
            mainA = nextA > leastA && nextA < mostA && !halves ? nextA : 0.5 * (leastA + mostA);
        }
        return Outcome.NODE_COLLAPSED;
    }

    private void look(BatteryWork battery) {
        terminal = battery.terminal();
        double removedAh = battery.removedAh();
        double boundAh = battery.totalBoundAh();
        surface = terminal.surfaceState(removedAh, boundAh);
        chargingSurface = battery.mayCharge() && !battery.isFull()
                ? terminal.chargingState(removedAh, boundAh)
                : Math.max(surface, 1);
        mayDischarge = battery.mayDischarge();
        idleV = terminal.idleV(removedAh, boundAh);
        openV = terminal.isNearlyExhausted(removedAh, boundAh) ? terminal.openV(removedAh, boundAh) : idleV;
    }

    /**
     * What the node asks from elsewhere to stand at a voltage (A): its circuits' current less what its battery gives;
     * fills in the point. Infinity: a feed would collapse there.
     */
    double askedAt(double nodeV, BatteryWork battery, NodePoint point) {
        look(battery);
        give(0, 0);
        return regulate(nodeV, point);
    }

    /** Slope of {@link #askedAt} over the voltage, at the voltage last asked for (A/V). */
    double askedSlopeAPerV(NodePoint point) {
        double batterySlope = point.mainA < 0 || (point.nodeV > idleV && chargingSurface < 1)
                ? slope(Math.min(point.mainA, -Double.MIN_NORMAL))
                : slope(point.mainA);
        boolean rests = point.mainA == 0 && (point.nodeV > idleV ? chargingSurface >= 1 : !mayDischarge);
        double gasSlope = point.gasA > 0 ? terminal.gassingSlopeAPerV(point.nodeV) : 0;
        return drawn.slopeAPerV() - (rests ? 0 : 1 / batterySlope) + gasSlope;
    }

    /** A full battery takes a surplus by gassing alone: the voltage at which it does. */
    private Outcome gassingAlone(double sourceA, NodePoint point) {
        double belowV = idleV;
        double aboveV = CEILING_V;
        while (aboveV - belowV > 1e-13 * CEILING_V) {
            double nodeV = 0.5 * (belowV + aboveV);
            if (!drawn.at(nodeV)) {
                return Outcome.CIRCUIT_COLLAPSED;
            }
            if (sourceA + givenA - drawn.sumA() > terminal.gassingA(nodeV)) {
                belowV = nodeV;
            } else {
                aboveV = nodeV;
            }
        }
        drawn.at(belowV);
        double stiffnessOhm = 1 / (terminal.gassingSlopeAPerV(belowV) + Math.max(0, drawn.slopeAPerV()));
        return accept(point, belowV, 0, sourceA + givenA - drawn.sumA(), sourceA, stiffnessOhm);
    }

    private Outcome accept(
            NodePoint point, double nodeV, double mainA, double gasA, double sourceA, double stiffnessOhm) {
        point.nodeV = nodeV;
        point.mainA = mainA;
        point.gasA = gasA;
        point.sourceA = sourceA;
        point.loadA = drawn.circuitsA();
        point.residualA = Math.abs(mainA - gasA + sourceA + givenA - drawn.sumA());
        point.stiffnessOhm = stiffnessOhm;
        return Outcome.SOLVED;
    }

    private double voltageV(double mainA) {
        return (mainA > 0 ? openV : idleV) - terminal.dropV(mainA < 0 ? chargingSurface : surface, mainA);
    }

    private double slope(double mainA) {
        return terminal.slopeVPerA(mainA < 0 ? chargingSurface : surface, mainA);
    }
}

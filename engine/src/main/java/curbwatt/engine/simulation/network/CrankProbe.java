package curbwatt.engine.simulation.network;

import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.StartingSystem;
import java.util.List;
import java.util.Optional;

/**
 * Asks, without changing anything, how low the starter battery's voltage would fall if the engine were cranked now.
 *
 * <p>The starter's inrush and its plateau are drawn one after the other, each as a constant current. Loads that stay
 * on are
 * drawn beside it as if all of them were lit at once; under the node's floor they count as at the floor. Within each
 * part the
 * voltage only falls, so its end is its lowest instant. A link that is closed both ways lets the auxiliary battery
 * help, and
 * its circuits draw with the others; behind any other link the auxiliary battery stands aside.
 */
public final class CrankProbe {

    private static final int ROUNDS = 40;
    private static final int HALVINGS = 60;

    private final StartingSystem starting;
    private final List<CircuitState> circuits;
    private final Optional<LinkState> link;
    /** What is cranked with, so that nothing is changed; made once, for this is asked at every long step. */
    private Batteries trial;

    public CrankProbe(StartingSystem starting, List<CircuitState> circuits, Optional<LinkState> link) {
        this.starting = starting;
        this.circuits = circuits;
        this.link = link;
    }

    /** Lowest voltage while cranking with the loads as the vehicle says (V). */
    public double lowestV(Batteries batteries) {
        return lowestV(batteries, starting.loadsStayOn());
    }

    /** Lowest voltage while cranking, with or without the connected loads (V). */
    public double lowestV(Batteries batteries, boolean loadsOn) {
        Starter starter = starting.starter();
        if (trial == null) {
            trial = batteries.copy();
        }
        trial.takeFrom(batteries);
        double lowestV = Double.POSITIVE_INFINITY;
        if (starter.inrushA() > 0 && starter.inrushS() > 0) {
            lowestV = afterDrawing(starter.inrushA(), starter.inrushS(), loadsOn);
        }
        double plateauA = starter.crankingA(batteries.starter().temperatureC());
        return Math.min(lowestV, afterDrawing(plateauA, starter.crankingS(), loadsOn));
    }

    /** What is asked at the battery's temperature (V). */
    public double minimumV(Batteries batteries) {
        return starting.limit().minimumV(batteries.starter().temperatureC());
    }

    /** Room above what is asked (V). */
    public double marginV(Batteries batteries) {
        return lowestV(batteries) - minimumV(batteries);
    }

    private boolean isHelped() {
        return link.filter(state -> state.isPath() && state.isTwoWay()).isPresent();
    }

    private double afterDrawing(double starterA, double durationS, boolean loadsOn) {
        double totalA = starterA + (loadsOn ? loadsBesideA(trial, starterA) : 0);
        double helpA = helpA(trial, totalA);
        trial.starter().advance(totalA - helpA, durationS);
        if (helpA > 0) {
            trial.auxiliary().advance(helpA, durationS);
        }
        return voltageV(trial, starterA + (loadsOn ? loadsBesideA(trial, starterA) : 0));
    }

    /** Current of the loads at the voltage that starter and loads together leave (A). */
    private double loadsBesideA(Batteries batteries, double starterA) {
        double loadsA = 0;
        for (int i = 0; i < ROUNDS; i++) {
            double nodeV = voltageV(batteries, starterA + loadsA);
            double nextA = drawA(Math.max(nodeV, NodeSolver.FLOOR_V));
            if (Math.abs(nextA - loadsA) < 1e-9) {
                break;
            }
            loadsA = nextA;
        }
        return loadsA;
    }

    private double voltageV(Batteries batteries, double totalA) {
        return voltageV(batteries.starter(), totalA - helpA(batteries, totalA));
    }

    /** Share of a current at the starter node that the auxiliary battery gives (A). */
    private double helpA(Batteries batteries, double totalA) {
        if (!isHelped()) {
            return 0;
        }
        double ohm = link.orElseThrow().resistanceOhm();
        double leastA = 0;
        double mostA = totalA;
        for (int i = 0; i < HALVINGS; i++) {
            double helpA = 0.5 * (leastA + mostA);
            double starterV = voltageV(batteries.starter(), totalA - helpA);
            double throughLinkV = voltageV(batteries.auxiliary(), helpA) - ohm * helpA;
            if (starterV < throughLinkV) {
                leastA = helpA;
            } else {
                mostA = helpA;
            }
        }
        return leastA;
    }

    private static double voltageV(BatteryWork battery, double mainA) {
        return battery.terminal().voltageV(battery.removedAh(), battery.totalBoundAh(), mainA);
    }

    private double drawA(double nodeV) {
        boolean helped = isHelped();
        double sumA = 0;
        for (CircuitState circuit : circuits) {
            if (circuit.isFed() && (helped || circuit.circuit.node() == BusNode.STARTER)) {
                circuit.allLit.solve(nodeV);
                sumA += circuit.allLit.currentA();
            }
        }
        return sumA;
    }
}

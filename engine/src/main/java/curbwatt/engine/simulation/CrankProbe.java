package curbwatt.engine.simulation;

import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.vehicle.StartingSystem;
import java.util.List;

/**
 * Asks, without changing anything, how low the battery's voltage would fall if the engine were cranked now.
 *
 * <p>The starter's inrush and its plateau are drawn one after the other, each as a constant current. Loads that stay on
 * are drawn beside it as if all of them were lit at once; under the node's floor they count as at the floor. Within
 * each
 * part the voltage only falls, so its end is its lowest instant.
 */
final class CrankProbe {

    private static final int ROUNDS = 40;

    private final StartingSystem starting;
    private final List<CircuitState> circuits;

    CrankProbe(StartingSystem starting, List<CircuitState> circuits) {
        this.starting = starting;
        this.circuits = circuits;
    }

    /** Lowest voltage while cranking with the loads as the vehicle says (V). */
    double lowestV(BatteryWork battery) {
        return lowestV(battery, starting.loadsStayOn());
    }

    /** Lowest voltage while cranking, with or without the connected loads (V). */
    double lowestV(BatteryWork battery, boolean loadsOn) {
        Starter starter = starting.starter();
        BatteryWork trial = battery.copy();
        double lowestV = Double.POSITIVE_INFINITY;
        if (starter.inrushA() > 0 && starter.inrushS() > 0) {
            lowestV = afterDrawing(trial, starter.inrushA(), starter.inrushS(), loadsOn);
        }
        double plateauA = starter.crankingA(battery.temperatureC());
        return Math.min(lowestV, afterDrawing(trial, plateauA, starter.crankingS(), loadsOn));
    }

    /** What is asked at the battery's temperature (V). */
    double minimumV(BatteryWork battery) {
        return starting.limit().minimumV(battery.temperatureC());
    }

    /** Room above what is asked (V). */
    double marginV(BatteryWork battery) {
        return lowestV(battery) - minimumV(battery);
    }

    private double afterDrawing(BatteryWork trial, double starterA, double durationS, boolean loadsOn) {
        trial.advance(starterA + (loadsOn ? loadsBesideA(trial, starterA) : 0), durationS);
        double totalA = starterA + (loadsOn ? loadsBesideA(trial, starterA) : 0);
        return trial.terminal().voltageV(trial.removedAh(), trial.totalBoundAh(), totalA);
    }

    /** Current of the loads at the voltage that starter and loads together leave (A). */
    private double loadsBesideA(BatteryWork battery, double starterA) {
        double loadsA = 0;
        for (int i = 0; i < ROUNDS; i++) {
            double nodeV = battery.terminal().voltageV(battery.removedAh(), battery.totalBoundAh(), starterA + loadsA);
            double nextA = drawA(Math.max(nodeV, NodeSolver.FLOOR_V));
            if (Math.abs(nextA - loadsA) < 1e-9) {
                break;
            }
            loadsA = nextA;
        }
        return loadsA;
    }

    private double drawA(double nodeV) {
        double sumA = 0;
        for (CircuitState circuit : circuits) {
            if (circuit.isFed()) {
                circuit.allLit.solve(nodeV);
                sumA += circuit.allLit.currentA();
            }
        }
        return sumA;
    }
}

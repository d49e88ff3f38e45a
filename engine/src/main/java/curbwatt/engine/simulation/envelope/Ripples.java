package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.vehicle.BusNode;
import java.util.List;

/** The ripple of each battery in the voltage of its node, and of all that hangs on it, at a place that moves along a step. */
final class Ripples {

    private final Ripple starter = new Ripple(BusNode.STARTER);
    private final Ripple equipment = new Ripple(BusNode.EQUIPMENT);
    private final boolean[] onStarter;
    private boolean two;

    Ripples(List<CircuitState> circuits) {
        onStarter = new boolean[circuits.size()];
        for (int c = 0; c < onStarter.length; c++) {
            onStarter[c] = circuits.get(c).circuit.node() == BusNode.STARTER;
        }
    }

    /** Goes to a time in a step (s). */
    void begin(LongStep step, double atS) {
        two = step.states().start.areTwo();
        begin(starter, step, atS);
        if (two) {
            begin(equipment, step, atS);
        }
    }

    private static void begin(Ripple ripple, LongStep step, double atS) {
        ripple.begin(step);
        if (atS > step.startS()) {
            ripple.goTo(atS);
        }
    }

    /** Goes through so much time in a combination. */
    void advance(int combination, double durationS) {
        starter.advance(combination, durationS);
        if (two) {
            equipment.advance(combination, durationS);
        }
    }

    /** Lets each node that has a battery, and what hangs on it, ride on that one's ripple. */
    void lift(OperatingPoint point, int combination) {
        double starterV = starter.atV(combination);
        double equipmentV = two ? equipment.atV(combination) : 0;
        point.starter.nodeV += starterV;
        point.equipment.nodeV += equipmentV;
        for (int c = 0; c < point.farV.length; c++) {
            point.farV[c] += onStarter[c] ? starterV : equipmentV;
        }
    }

    /** The ripple that a voltage rides on; null: it hangs on no battery. */
    Ripple at(SenseTap tap) {
        boolean atStarter = tap.circuit() >= 0 ? onStarter[tap.circuit()] : !tap.equipment();
        if (atStarter) {
            return starter;
        }
        return two ? equipment : null;
    }
}

package curbwatt.charts.run;

import curbwatt.engine.budget.CircuitDemand;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.wiring.CircuitPlan;
import curbwatt.engine.wiring.WireAdvice;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Optional;

/**
 * A circuit's feed at the currents that its scene asks of it: those of the phase with the largest mean, and of the one
 * with
 * the largest peak.
 *
 * @param circuit the circuit
 * @param meanA largest mean current of a phase (A)
 * @param peakA largest current with everything lit at once (A)
 * @param advice what the rules say; empty: the scenario does not say of which wire the feed is made
 */
public record CircuitWiring(Circuit circuit, double meanA, double peakA, Optional<WireAdvice> advice) {

    /** Voltage that the drop is a share of (V). */
    public static final double SYSTEM_V = 12;

    /** The circuits of a scenario, in its order, each with its plan where the scenario gives its wire. */
    public static List<CircuitWiring> of(ReadyScenario scenario) {
        return of(scenario, scenario.circuitPlans());
    }

    /** The same with other plans, each by its circuit's name. */
    public static List<CircuitWiring> of(ReadyScenario scenario, List<CircuitPlan> plans) {
        return scenario.vehicle().circuits().stream()
                .map(circuit -> of(scenario, circuit, plans))
                .toList();
    }

    private static CircuitWiring of(ReadyScenario scenario, Circuit circuit, List<CircuitPlan> plans) {
        CircuitDemand demand = CircuitDemand.of(scenario.vehicle(), scenario.scene(), circuit);
        Optional<WireAdvice> advice = plans.stream()
                .filter(plan -> plan.name().equals(circuit.name()))
                .findFirst()
                .map(WireAdvice::of);
        return new CircuitWiring(circuit, demand.meanA(), demand.peakA(), advice);
    }

    /** Drop at the mean current, out and back (V). */
    public double meanDropV() {
        return advice.map(WireAdvice::dropV).orElse(meanA * circuit.feedOhm());
    }

    /** Drop at the peak, out and back (V). */
    public double peakDropV() {
        return advice.map(WireAdvice::peakDropV).orElse(peakA * circuit.feedOhm());
    }

    /** Drop at the mean current over the system's voltage. */
    public double dropFraction() {
        return meanDropV() / SYSTEM_V;
    }
}

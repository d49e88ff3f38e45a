package curbwatt.charts.run;

import curbwatt.engine.budget.LoadBudget;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.wiring.CircuitPlan;
import curbwatt.engine.wiring.WireAdvice;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
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
 * @param advice what the rules say; empty: the scenario does not say of which wire and fuse the feed is made
 */
public record CircuitWiring(Circuit circuit, double meanA, double peakA, Optional<WireAdvice> advice) {

    /** Voltage that the drop is a share of (V). */
    public static final double SYSTEM_V = 12;

    /** The circuits of a scenario, in its order; what it tells of feeds is their resistance alone. */
    public static List<CircuitWiring> of(ReadyScenario scenario) {
        return of(scenario, List.of());
    }

    /** The same with the plans of those feeds whose wire is known, each by its circuit's name. */
    public static List<CircuitWiring> of(ReadyScenario scenario, List<CircuitPlan> plans) {
        List<LoadBudget> budgets = scenario.scene().phases().stream()
                .map((Phase phase) -> LoadBudget.of(scenario.vehicle(), phase))
                .toList();
        List<CircuitWiring> all = new ArrayList<>();
        for (Circuit circuit : scenario.vehicle().circuits()) {
            double meanA = 0;
            double peakA = 0;
            for (LoadBudget budget : budgets) {
                List<LoadBudget.Line> lines = budget.lines().stream()
                        .filter(line -> line.circuit().equals(circuit.name()))
                        .toList();
                meanA = Math.max(
                        meanA,
                        lines.stream().mapToDouble(LoadBudget.Line::meanA).sum());
                peakA = Math.max(
                        peakA,
                        lines.stream().mapToDouble(LoadBudget.Line::peakA).sum());
            }
            Optional<WireAdvice> advice = plans.stream()
                    .filter(plan -> plan.name().equals(circuit.name()))
                    .findFirst()
                    .map(WireAdvice::of);
            all.add(new CircuitWiring(circuit, meanA, peakA, advice));
        }
        return all;
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

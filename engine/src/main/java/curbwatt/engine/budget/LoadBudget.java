package curbwatt.engine.budget;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.load.Load;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a phase draws at a steady node voltage, feed drops left out.
 *
 * @param phase name of the phase
 * @param voltageV node voltage assumed (V)
 * @param lines one for each load, circuit by circuit
 * @param alternatorA hot output at the phase's lowest engine speed (A); empty: engine not running or no alternator
 * @param balanceRpm engine speed at which the hot output equals the mean load (1/min); empty: none up to 8000 /min, or
 *     no
 *     alternator
 */
public record LoadBudget(
        String phase, double voltageV, List<Line> lines, OptionalDouble alternatorA, OptionalDouble balanceRpm) {

    /** Node voltage assumed with the engine running (V): the voltage of alternator labels. */
    public static final double RUNNING_V = 13.5;

    /** Node voltage assumed with the engine off (V): a battery on the way down; common practice. */
    public static final double ENGINE_OFF_V = 12.2;

    /**
     * A load in the budget.
     *
     * @param circuit its circuit
     * @param load its name
     * @param on whether the phase switches it on
     * @param onFraction share of time at its rated current
     * @param meanA mean current (A)
     * @param peakA largest current (A)
     */
    public record Line(String circuit, String load, boolean on, double onFraction, double meanA, double peakA) {}

    /** Copies the lines. */
    public LoadBudget {
        lines = List.copyOf(lines);
    }

    /** The budget of a phase of a vehicle's scene. */
    public static LoadBudget of(Vehicle vehicle, Phase phase) {
        double voltageV = phase.mode().isRunning() ? RUNNING_V : ENGINE_OFF_V;
        List<Line> lines = new ArrayList<>();
        for (Circuit circuit : vehicle.circuits()) {
            for (Load load : circuit.loads()) {
                lines.add(line(circuit, load, load.isOnIn(phase.stages()), voltageV));
            }
        }
        double meanA = lines.stream().mapToDouble(Line::meanA).sum();
        Optional<Alternator> alternator = alternator(vehicle, phase);
        OptionalDouble alternatorA = alternator.isPresent() && phase.mode().isRunning()
                ? OptionalDouble.of(alternator.get().maximumA(phase.speed().lowestRpm()))
                : OptionalDouble.empty();
        OptionalDouble balanceRpm =
                alternator.map(machine -> machine.balanceRpm(meanA)).orElse(OptionalDouble.empty());
        return new LoadBudget(phase.name(), voltageV, lines, alternatorA, balanceRpm);
    }

    /** A vehicle's alternator, as hot as a phase makes it at most; empty: it has none. */
    public static Optional<Alternator> alternator(Vehicle vehicle, Phase phase) {
        return vehicle.alternator()
                .map(machine ->
                        machine.under(phase.hottestUnderHoodC(vehicle.engine().underHood())));
    }

    /** Mean current of all loads (A). */
    public double meanA() {
        return lines.stream().mapToDouble(Line::meanA).sum();
    }

    /** Current with everything lit at once (A). */
    public double peakA() {
        return lines.stream().mapToDouble(Line::peakA).sum();
    }

    private static Line line(Circuit circuit, Load load, boolean on, double voltageV) {
        double standbyA = load.standbyCurrentA();
        return on
                ? new Line(
                        circuit.name(),
                        load.name(),
                        true,
                        load.pattern().onFraction(),
                        load.meanCurrentA(voltageV),
                        Math.max(load.currentA(voltageV), load.betweenCurrentA()))
                : new Line(circuit.name(), load.name(), false, 0, standbyA, standbyA);
    }
}

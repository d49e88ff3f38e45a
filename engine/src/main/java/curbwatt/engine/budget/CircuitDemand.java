package curbwatt.engine.budget;

import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;

/**
 * What a scene asks of one circuit, by the load budgets of its phases.
 *
 * @param meanA largest mean current of a phase (A)
 * @param peakA largest current with everything lit at once (A)
 * @param peakS longest on-time of a load that comes and goes (s); the peak lasts no longer in one piece. 0: none does
 */
public record CircuitDemand(double meanA, double peakA, double peakS) {

    /** The demand of a circuit of a vehicle in a scene. */
    public static CircuitDemand of(Vehicle vehicle, Scene scene, Circuit circuit) {
        double meanA = 0;
        double peakA = 0;
        double peakS = 0;
        for (Phase phase : scene.phases()) {
            List<LoadBudget.Line> lines = LoadBudget.of(vehicle, phase).lines().stream()
                    .filter(line -> line.circuit().equals(circuit.name()))
                    .toList();
            meanA = Math.max(
                    meanA, lines.stream().mapToDouble(LoadBudget.Line::meanA).sum());
            peakA = Math.max(
                    peakA, lines.stream().mapToDouble(LoadBudget.Line::peakA).sum());
            for (Load load : circuit.loads()) {
                if (load.isOnIn(phase.stages())) {
                    peakS = Math.max(peakS, longestOnS(load.pattern()));
                }
            }
        }
        return new CircuitDemand(meanA, peakA, peakS);
    }

    private static double longestOnS(LoadPattern pattern) {
        if (pattern instanceof LoadPattern.Flashing flashing) {
            return flashing.onIntervals().stream()
                            .mapToDouble(OnInterval::lengthMs)
                            .max()
                            .orElse(0)
                    / 1000;
        }
        if (pattern instanceof LoadPattern.Duty duty) {
            return duty.onS();
        }
        return pattern instanceof LoadPattern.RandomDuty random ? random.onS() : 0;
    }
}

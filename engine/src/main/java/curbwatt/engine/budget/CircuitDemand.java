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
 * @param heatingA largest root mean square of a phase (A): what warms wire and fuse. Taken as if all that comes and goes
 *     came at once, so that the truth lies at or below it
 * @param peakA largest current with everything lit at once (A)
 * @param peakS longest on-time of a load that comes and goes (s); the peak lasts no longer in one piece. 0: none does
 */
public record CircuitDemand(double meanA, double heatingA, double peakA, double peakS) {

    /** The demand of a circuit of a vehicle in a scene. */
    public static CircuitDemand of(Vehicle vehicle, Scene scene, Circuit circuit) {
        double meanA = 0;
        double heatingA = 0;
        double peakA = 0;
        double peakS = 0;
        for (Phase phase : scene.phases()) {
            List<LoadBudget.Line> lines = LoadBudget.of(vehicle, phase).lines().stream()
                    .filter(line -> line.circuit().equals(circuit.name()))
                    .toList();
            meanA = Math.max(
                    meanA, lines.stream().mapToDouble(LoadBudget.Line::meanA).sum());
            heatingA = Math.max(heatingA, heatingA(lines));
            peakA = Math.max(
                    peakA, lines.stream().mapToDouble(LoadBudget.Line::peakA).sum());
            for (Load load : circuit.loads()) {
                if (load.isOnIn(phase.stages())) {
                    peakS = Math.max(peakS, longestOnS(load.pattern()));
                }
            }
        }
        return new CircuitDemand(meanA, heatingA, peakA, peakS);
    }

    /** Deviations of loads in step add up; of loads out of step they add up to less. */
    private static double heatingA(List<LoadBudget.Line> lines) {
        double meanA = lines.stream().mapToDouble(LoadBudget.Line::meanA).sum();
        double deviationA =
                lines.stream().mapToDouble(CircuitDemand::deviationA).sum();
        return Math.hypot(meanA, deviationA);
    }

    /** Largest standard deviation of a current between 0 and a peak: that of one that is either. */
    private static double deviationA(LoadBudget.Line line) {
        return Math.sqrt(line.meanA() * Math.max(0, line.peakA() - line.meanA()));
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

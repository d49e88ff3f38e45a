package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.budget.LoadBudget;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A phase in which the engine ran.
 *
 * @param name its name
 * @param fromRpm lowest engine speed (1/min)
 * @param toRpm highest engine speed (1/min)
 * @param demandA mean load of its budget (A)
 * @param underHoodC hottest air under the hood (°C); empty: nobody says
 * @param alternator the alternator as hot as it gets there
 */
record RunningPhase(
        String name, double fromRpm, double toRpm, double demandA, OptionalDouble underHoodC, Alternator alternator) {

    private static final int MOST = 3;

    /** The phases that last longest, in the scene's order. */
    static List<RunningPhase> longest(RunStory story) {
        List<Phase> phases = story.scenario().scene().phases();
        List<PhaseSummary> summaries = story.result().phases();
        List<PhaseSummary> longest = summaries.stream()
                .filter(PhaseSummary::engineRan)
                .sorted(Comparator.comparing((PhaseSummary summary) -> -summary.durationS()))
                .limit(MOST)
                .toList();
        List<RunningPhase> running = new ArrayList<>();
        for (int i = 0; i < Math.min(phases.size(), summaries.size()); i++) {
            if (longest.contains(summaries.get(i))) {
                running.add(of(story.scenario().vehicle(), phases.get(i)));
            }
        }
        return running;
    }

    private static RunningPhase of(Vehicle vehicle, Phase phase) {
        double toRpm = phase.speed().points().stream()
                .mapToDouble(EngineSpeed.Point::engineRpm)
                .max()
                .orElseThrow();
        return new RunningPhase(
                phase.name(),
                phase.speed().lowestRpm(),
                toRpm,
                LoadBudget.of(vehicle, phase).meanA(),
                phase.hottestUnderHoodC(vehicle.engine().underHood()),
                LoadBudget.alternator(vehicle, phase).orElseThrow());
    }

    /** Engine speed at which the alternator carries its load (1/min); empty: none. */
    OptionalDouble balanceRpm() {
        return alternator.balanceRpm(demandA);
    }

    /** Lowest speed, air under the hood, and output there. */
    String outputText() {
        String hood = underHoodC.isPresent() ? String.format(Locale.ROOT, ", %.0f °C", underHoodC.getAsDouble()) : "";
        return String.format(Locale.ROOT, "%.0f/min%s: %.0f A", fromRpm, hood, alternator.maximumA(fromRpm));
    }
}

package curbwatt.charts.run;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A few seconds of a run that are looked at step by step.
 *
 * @param fromS start, since the scene's start (s)
 * @param toS end (s)
 */
public record CloseUp(double fromS, double toS) {

    /** Length (s): a few flash cycles. */
    static final double LENGTH_S = 4;

    /** How much of a window at a trip lies behind it (s): enough to see the voltage rise when the loads are gone. */
    private static final double AFTER_TRIP_S = 0.5;

    /**
     * The window at the first trip; without one, at the lowest voltage with the engine off; without that, in the first
     * phase
     * in which something flashes. Empty if nothing flashes at any of them.
     */
    static Optional<CloseUp> of(ReadyScenario scenario, RunResult result, Trace trace) {
        Scene scene = scenario.scene();
        OptionalDouble endS = firstTripS(result);
        if (endS.isEmpty() || !flashes(scenario.vehicle(), phaseAt(scene, endS.getAsDouble()))) {
            endS = lowestEngineOffS(scenario, trace);
        }
        if (endS.isEmpty()) {
            endS = firstFlashingS(scenario);
        }
        return endS.stream()
                .mapToObj(toS -> new CloseUp(Math.max(0, toS - LENGTH_S), toS))
                .findFirst();
    }

    private static OptionalDouble firstTripS(RunResult result) {
        return result.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .mapToDouble(Event::timeS)
                .map(timeS -> Math.min(timeS + AFTER_TRIP_S, result.durationS()))
                .findFirst();
    }

    private static OptionalDouble lowestEngineOffS(ReadyScenario scenario, Trace trace) {
        return trace.rows().stream()
                .filter(row -> {
                    Phase phase = phaseAt(scenario.scene(), row.timeS());
                    return !phase.mode().isRunning() && flashes(scenario.vehicle(), phase);
                })
                .filter(row -> row.timeS() > 0)
                .min(Comparator.comparingDouble(TraceRow::nodeMinV))
                .stream()
                .mapToDouble(TraceRow::timeS)
                .findFirst();
    }

    private static OptionalDouble firstFlashingS(ReadyScenario scenario) {
        Scene scene = scenario.scene();
        for (int i = 0; i < scene.phases().size(); i++) {
            Phase phase = scene.phases().get(i);
            if (flashes(scenario.vehicle(), phase)) {
                // the phase's end, because its start is busy with the engine and the regulator
                return OptionalDouble.of(scene.startS(i) + phase.durationS());
            }
        }
        return OptionalDouble.empty();
    }

    private static boolean flashes(Vehicle vehicle, Phase phase) {
        return vehicle.loads()
                .anyMatch(load -> load.pattern() instanceof LoadPattern.Flashing && load.isOnIn(phase.stages()));
    }

    /** The phase that an instant lies in; an instant between two belongs to the earlier one. */
    private static Phase phaseAt(Scene scene, double timeS) {
        double endS = 0;
        for (Phase phase : scene.phases()) {
            endS += phase.durationS();
            if (timeS <= endS) {
                return phase;
            }
        }
        return scene.phases().get(scene.phases().size() - 1);
    }
}

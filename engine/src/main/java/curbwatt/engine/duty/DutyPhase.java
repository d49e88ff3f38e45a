package curbwatt.engine.duty;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import java.util.Set;

/** A phase of a duty test, as it is asked for and as it is found in a run. */
final class DutyPhase {

    private DutyPhase() {}

    /** A phase that switches on nothing but what the vehicle as tested has on. */
    static Phase of(String name, EngineMode mode, double durationS, double airC, double engineRpm) {
        return new Phase(name, mode, durationS, airC, EngineSpeed.constant(engineRpm), Set.of());
    }

    /** A phase's figures in a run. */
    static PhaseSummary figures(RunResult run, String phase) {
        return run.phases().stream()
                .filter(summary -> summary.phase().equals(phase))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the run has no phase '" + phase + "'"));
    }

    /** Whether no cutoff opened during a phase. */
    static boolean staysSupplied(RunResult run, PhaseSummary phase) {
        return run.events().stream()
                .filter(event -> event.timeS() >= phase.startS() && event.timeS() <= phase.startS() + phase.durationS())
                .noneMatch(event ->
                        event.kind() == EventKind.CUTOFF_TRIPPED || event.kind() == EventKind.RUN_TIME_LIMIT_REACHED);
    }
}

package curbwatt.engine.duty;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Set;

/**
 * A duty test of a standard, made for one vehicle: run {@link #scene} with {@link #vehicle}, and {@link #judge} what
 * comes out. A prediction, not a certification.
 */
public sealed interface DutyTest permits ReserveTest, IdleBalanceTest, LowVoltageAlarmTest {

    /** What every page that shows an outcome has to say. */
    String CAUTION = "a prediction, not a certification";

    /** Its name, with the standard. */
    String name();

    /** The vehicle as tested: the loads under test switched on, the others off. */
    Vehicle vehicle();

    /** What it goes through. */
    Scene scene();

    /** The figure's limit. */
    DutyCriterion criterion();

    /** The outcome of a run of {@link #scene} with {@link #vehicle}. */
    DutyOutcome judge(RunResult run);

    /** A phase that switches on nothing but what the vehicle as tested has on. */
    static Phase phase(String name, EngineMode mode, double durationS, double airC, double engineRpm) {
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

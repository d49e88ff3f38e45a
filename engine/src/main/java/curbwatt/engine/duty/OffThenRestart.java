package curbwatt.engine.duty;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.quantity.Require;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Scene;
import java.util.List;

/**
 * The scene of every test that begins with the engine off: a full battery, the load on for a time, then a start and a
 * minute at idle.
 *
 * @param offS how long the engine stays off (s)
 * @param airC air and battery temperature (°C), −40 … 70
 * @param idleRpm engine speed after the start (1/min)
 */
record OffThenRestart(double offS, double airC, double idleRpm) {

    private static final String OFF = "engine off";
    private static final String RESTART = "restart";
    private static final double RUNNING_S = 60;

    /** Refuses a temperature out of range. */
    OffThenRestart {
        requireAir(airC);
    }

    /** Refuses a temperature out of range (°C). */
    static void requireAir(double airC) {
        Require.inside("airC", airC, -40, 70, "°C");
    }

    /** The scene of a test. */
    Scene scene(String test) {
        return new Scene(
                test,
                new InitialState(1, airC),
                List.of(
                        DutyPhase.of(OFF, EngineMode.OFF, offS, airC, 0),
                        DutyPhase.of(RESTART, EngineMode.IDLING, RUNNING_S, airC, idleRpm)));
    }

    /** The figures of the time with the engine off. */
    static PhaseSummary off(RunResult run) {
        return DutyPhase.figures(run, OFF);
    }

    /** The outcome of a test that found its figure: no cutoff may have opened, and the engine must run again. */
    static DutyOutcome outcome(DutyTest test, double found, RunResult run) {
        return DutyOutcome.of(
                test,
                found,
                DutyPhase.staysSupplied(run, off(run)),
                DutyPhase.figures(run, RESTART).engineRan());
    }
}

package curbwatt.engine.duty;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.quantity.Require;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Low-voltage alarm test: engine off, total continuous load on from a full battery; the alarm must sound within 140 s
 * of
 * the battery reaching 11.70 V, and the engine must start then. NFPA 1901, as a public specification quotes it.
 *
 * <p>A scene's phases have fixed lengths, and the time at which 11.70 V is reached is not known beforehand. So it takes
 * two runs: one with ample {@code offS}, then one of {@link #endingAfter}, which starts the engine 140 s after that
 * moment. The alarm is the warning of any of the vehicle's cutoffs. The voltage is read by a test voltmeter: a load at
 * the
 * node that draws nothing and drops out at 11.70 V.
 *
 * @param installed the vehicle
 * @param totalContinuous names of the circuits that make up the total continuous load
 * @param offS how long the engine stays off (s), 140 … 10 days
 * @param airC air and battery temperature (°C), −40 … 70
 * @param idleRpm engine speed after the start (1/min)
 */
public record LowVoltageAlarmTest(
        Vehicle installed, Set<String> totalContinuous, double offS, double airC, double idleRpm) implements DutyTest {

    /** Battery voltage from which the time counts (V). */
    public static final double REACHED_V = 11.70;

    /** Longest time to the alarm (s). */
    public static final double ALARM_S = 140;

    private static final String VOLTMETER = "test voltmeter";

    /** Refuses figures out of range and circuits that are not there. */
    public LowVoltageAlarmTest {
        totalContinuous = Set.copyOf(totalContinuous);
        LoadsUnderTest.in(installed, totalContinuous);
        Require.inside("offS", offS, ALARM_S, 864000, "s");
        OffThenRestart.requireAir(airC);
    }

    @Override
    public String name() {
        return "Low-voltage alarm test (NFPA 1901 as quoted)";
    }

    @Override
    public Vehicle vehicle() {
        DropOut mark = new DropOut(REACHED_V, 16, 600);
        Load voltmeter = new Load(VOLTMETER, 0, 12, 0, 0, mark, new LoadPattern.Continuous(), Set.of());
        return LoadsUnderTest.in(installed, totalContinuous, new Circuit(VOLTMETER, 0, List.of(voltmeter)));
    }

    @Override
    public Scene scene() {
        return new OffThenRestart(offS, airC, idleRpm).scene(name());
    }

    @Override
    public DutyCriterion criterion() {
        return new DutyCriterion(
                "time from 11.70 V at the battery to the alarm",
                ALARM_S,
                "s",
                "NFPA 1901, low-voltage alarm test, as quoted in a public purchase specification",
                DutyCriterion.Obtained.READ);
    }

    /** When the battery reached 11.70 V in a run (s since its start); empty: it did not while the engine was off. */
    public OptionalDouble reachedS(RunResult run) {
        return run.events().stream()
                .filter(event -> event.kind() == EventKind.LOAD_DROPPED_OUT)
                .filter(event -> event.subject().equals(VOLTMETER) && event.timeS() <= offS)
                .mapToDouble(event -> event.timeS())
                .findFirst();
    }

    /** The same test, its engine started 140 s after the moment at which a first run reached 11.70 V. */
    public LowVoltageAlarmTest endingAfter(double firstReachedS) {
        return new LowVoltageAlarmTest(installed, totalContinuous, firstReachedS + ALARM_S, airC, idleRpm);
    }

    /**
     * The outcome: undecided where 11.70 V was not reached, because the load was cut off before or the time was too
     * short; an infinite figure where no alarm came at all. An alarm before 11.70 V gives a negative figure.
     */
    @Override
    public DutyOutcome judge(RunResult run) {
        OptionalDouble reachedS = reachedS(run);
        double alarmS = run.events().stream()
                .filter(event -> event.kind() == EventKind.WARNING_BEGAN && event.timeS() <= offS)
                .mapToDouble(event -> event.timeS())
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        double found = reachedS.isPresent() ? alarmS - reachedS.getAsDouble() : Double.NaN;
        return OffThenRestart.outcome(this, found, run);
    }
}

package curbwatt.engine.duty;

import curbwatt.engine.quantity.Require;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Set;

/**
 * Reserve capacity test: engine off, minimum continuous load on for ten minutes from a full battery; not more than half
 * the reserve capacity may be used, and the engine must start again. NFPA 1901, as a public purchase specification
 * quotes
 * it.
 *
 * <p>Half of a reserve of RC minutes at 25 A is 0.5 · RC · 25 A: in ten minutes a mean load of 1.25 · RC amperes,
 * whatever
 * the rate makes of it.
 *
 * @param installed the vehicle
 * @param minimumContinuous names of the circuits that make up the minimum continuous load
 * @param reserveMin reserve capacity on the battery's label (min), all batteries of the node together
 * @param airC air and battery temperature (°C), −40 … 70
 * @param idleRpm engine speed after the start (1/min)
 */
public record ReserveTest(
        Vehicle installed, Set<String> minimumContinuous, double reserveMin, double airC, double idleRpm)
        implements DutyTest {

    private static final double TEST_S = 600;
    private static final double RESERVE_CURRENT_A = 25;

    /** Refuses figures out of range and circuits that are not there. */
    public ReserveTest {
        minimumContinuous = Set.copyOf(minimumContinuous);
        LoadsUnderTest.in(installed, minimumContinuous);
        Require.inside("reserveMin", reserveMin, 10, 2000, "min");
        OffThenRestart.requireAir(airC);
    }

    @Override
    public String name() {
        return "Reserve capacity test (NFPA 1901 as quoted)";
    }

    @Override
    public Vehicle vehicle() {
        return LoadsUnderTest.in(installed, minimumContinuous);
    }

    @Override
    public Scene scene() {
        return new OffThenRestart(TEST_S, airC, idleRpm).scene(name());
    }

    @Override
    public DutyCriterion criterion() {
        return new DutyCriterion(
                "charge taken from the battery in ten minutes",
                0.5 * reserveMin / 60 * RESERVE_CURRENT_A,
                "Ah",
                "NFPA 1901, reserve capacity test, as quoted in a public production specification",
                DutyCriterion.Obtained.READ);
    }

    @Override
    public DutyOutcome judge(RunResult run) {
        PhaseSummary off = OffThenRestart.off(run);
        return OffThenRestart.outcome(this, off.meanBatteryA() * off.durationS() / 3600, run);
    }
}

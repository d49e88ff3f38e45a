package curbwatt.charts.run;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.label.LabelTestRun;
import curbwatt.engine.duty.DutyOutcome;
import curbwatt.engine.duty.DutyTest;
import curbwatt.engine.duty.IdleBalanceTest;
import curbwatt.engine.duty.LowVoltageAlarmTest;
import curbwatt.engine.duty.ReserveTest;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Runs the standard duty tests on a vehicle.
 *
 * @param vehicle the vehicle
 * @param minimum names of the circuits that make up the minimum continuous load
 * @param total names of those that make up the total continuous load
 * @param idleRpm engine speed at idle (1/min)
 * @param highIdleRpm engine speed of the ambulance test, at most the maker's high idle (1/min)
 * @param medicalA medical load that the ambulance test adds to the circuits (A)
 * @param airC air and battery temperature of the tests with the engine off (°C)
 */
public record DutyRunner(
        Vehicle vehicle,
        Set<String> minimum,
        Set<String> total,
        double idleRpm,
        double highIdleRpm,
        double medicalA,
        double airC) {

    /** Longest time that the alarm test waits for its voltage (s). */
    private static final double LONGEST_S = 2 * 86400.0;

    /** Copies the sets. */
    public DutyRunner {
        minimum = Set.copyOf(minimum);
        total = Set.copyOf(total);
    }

    /**
     * The outcomes, in the order in which the tests are named in the manual; the idle tests are left out where there is
     * no alternator.
     */
    public List<DutyOutcome> run() {
        List<DutyOutcome> outcomes = new ArrayList<>();
        outcomes.add(judged(new ReserveTest(vehicle, minimum, reserveMin(), airC, idleRpm)));
        if (vehicle.alternator().isPresent()) {
            outcomes.add(judged(new IdleBalanceTest(vehicle, IdleBalanceTest.Rule.FIRE_APPARATUS, minimum, idleRpm)));
            outcomes.add(
                    judged(new IdleBalanceTest(vehicle, IdleBalanceTest.Rule.AMBULANCE, total, highIdleRpm, medicalA)));
        }
        outcomes.add(alarm());
        return List.copyOf(outcomes);
    }

    /** Reserve capacity of all batteries as new, by the label test run on their models (min). */
    public double reserveMin() {
        double starterMin = reserveMin(vehicle.battery().battery());
        return starterMin
                + vehicle.auxiliary()
                        .map(auxiliary -> reserveMin(auxiliary.installation().battery()))
                        .orElse(0.0);
    }

    private static double reserveMin(Battery battery) {
        return LabelTestRun.reserveMin(Battery.asNew(battery.parameters()));
    }

    /** Two runs: the first finds when the voltage is reached, the second starts the engine after it. */
    private DutyOutcome alarm() {
        LowVoltageAlarmTest first = new LowVoltageAlarmTest(vehicle, total, LONGEST_S, airC, idleRpm);
        RunResult run = run(first);
        OptionalDouble reachedS = first.reachedS(run);
        return reachedS.isPresent() ? judged(first.endingAfter(reachedS.getAsDouble())) : first.judge(run);
    }

    private static DutyOutcome judged(DutyTest test) {
        return test.judge(run(test));
    }

    private static RunResult run(DutyTest test) {
        return Simulation.of(test.vehicle(), test.scene()).run(Recorder.none());
    }
}

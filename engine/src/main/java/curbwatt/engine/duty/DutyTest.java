package curbwatt.engine.duty;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;

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
}

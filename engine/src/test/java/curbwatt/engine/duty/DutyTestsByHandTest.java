package curbwatt.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.duty.DutyOutcome.Answer;
import curbwatt.engine.powertrain.UnderHood;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each test worked by hand for a truck whose load under test is a constant current. */
class DutyTestsByHandTest {
    private static final Set<String> CONTINUOUS = Set.of("continuous");

    /** 90 A for 600 s is 15 Ah; half of 160 min at 25 A is 33.33 Ah. */
    @Test
    void reserveIsCurrentTimesTime() {
        DutyOutcome outcome = reserve(90);
        assertThat(outcome.found()).isCloseTo(15, within(1e-6));
        assertThat(outcome.criterion().limit()).isCloseTo(33.333, within(1e-3));
        assertThat(outcome.answer()).isEqualTo(Answer.PASSED);
    }

    /** 1.25 · 160 = 200 A is the limit: 201 A uses 33.5 Ah. */
    @Test
    void reserveIsOverspentAboveItsLimit() {
        DutyOutcome outcome = reserve(201);
        assertThat(outcome.found()).isCloseTo(33.5, within(1e-6));
        assertThat(outcome.answer()).isEqualTo(Answer.FAILED);
    }

    /** The cutoff opens after 30 s below a level that the load passes at once: less is used, and it is no pass. */
    @Test
    void aReserveTestWhoseLoadIsCutOffIsNotPassed() {
        ReserveTest test = new ReserveTest(
                TestTruck.drawing(90, TestTruck.cutoff(12.9, 12.8)), CONTINUOUS, TestTruck.RESERVE_MIN, 25, 700);
        DutyOutcome outcome = test.judge(run(test));
        assertThat(outcome.found()).isCloseTo(90 * 30 / 3600.0, within(1e-3));
        assertThat(outcome.supplied()).isFalse();
        assertThat(outcome.answer()).isEqualTo(Answer.FAILED);
    }

    /**
     * Label 50/120 A at 1800 /min of its shaft: 79.87 A cold. Hot share 0.6667 + 500/1200 · (0.82 − 0.6667) = 0.7306:
     * 58.35 A. With 62 A the battery gives 3.65 A.
     */
    @Test
    void idleBalanceIsOutputLessLoad() {
        DutyOutcome outcome = balance(62);
        assertThat(outcome.found()).isCloseTo(62 - 58.35, within(0.01));
        assertThat(outcome.answer()).isEqualTo(Answer.FAILED);
    }

    /** With 50 A there are 8.35 A to spare. */
    @Test
    void idleBalanceHoldsWithRoom() {
        DutyOutcome outcome = balance(50);
        assertThat(outcome.found()).isLessThanOrEqualTo(0).isGreaterThan(-8.36);
        assertThat(outcome.answer()).isEqualTo(Answer.PASSED);
    }

    /** The ambulance rule adds its 20 A: with 40 A of circuits the battery gives 60 − 58.35 = 1.65 A. */
    @Test
    void theAmbulanceCarriesItsMedicalLoadToo() {
        DutyOutcome outcome = ambulance(TestTruck.drawing(40), 1800 / TestTruck.PULLEY_RATIO);
        assertThat(outcome.found()).isCloseTo(60 - 58.35, within(0.01));
        assertThat(outcome.answer()).isEqualTo(Answer.FAILED);
        assertThat(ambulance(TestTruck.drawing(30), 1800 / TestTruck.PULLEY_RATIO)
                        .answer())
                .isEqualTo(Answer.PASSED);
    }

    /** At 2400 /min of the shaft, 101.17 A cold and 0.8072 hot leave 81.66 A: 60 A are carried at the high idle. */
    @Test
    void theAmbulanceMayUseItsHighIdle() {
        assertThat(ambulance(TestTruck.drawing(40), 2400 / TestTruck.PULLEY_RATIO)
                        .answer())
                .isEqualTo(Answer.PASSED);
        assertThat(ambulance(TestTruck.drawing(65), 2400 / TestTruck.PULLEY_RATIO)
                        .found())
                .isCloseTo(85 - 81.66, within(0.01));
    }

    /** A vehicle whose own engine space stays cool is still tested at 93 °C. */
    @Test
    void theRulesAirUnderTheHoodWinsOverTheVehicles() {
        Vehicle truck = TestTruck.drawing(62);
        Vehicle cool = truck.withEngine(new EngineEquipment(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(UnderHood.none())));
        assertThat(balance(cool)).isEqualTo(balance(truck));
    }

    /** A warning at 11.80 V sounds on the way down, before 11.70 V. */
    @Test
    void anAlarmAboveTheLevelComesBeforeIt() {
        DutyOutcome outcome = alarm(11.8);
        assertThat(outcome.found()).isNegative();
        assertThat(outcome.answer()).isEqualTo(Answer.PASSED);
    }

    /** A warning at 11.0 V comes long after: the battery falls 0.7 V much slower than in 140 s. */
    @Test
    void anAlarmFarBelowComesTooLate() {
        DutyOutcome outcome = alarm(11.0);
        assertThat(outcome.found()).isGreaterThan(140);
        assertThat(outcome.answer()).isEqualTo(Answer.FAILED);
    }

    @Test
    void anAlarmTestThatNeverReachesItsVoltageIsUndecided() {
        LowVoltageAlarmTest test = alarmTest(11.8, 600);
        assertThat(test.judge(run(test)).answer()).isEqualTo(Answer.UNDECIDED);
    }

    @Test
    void aVehicleWithoutAlarmFails() {
        LowVoltageAlarmTest test = new LowVoltageAlarmTest(TestTruck.drawing(20), CONTINUOUS, 20_000, 25, 700);
        DutyOutcome outcome = test.judge(run(test));
        assertThat(outcome.found()).isInfinite();
        assertThat(outcome.answer()).isEqualTo(Answer.FAILED);
    }

    @Test
    void refusesCircuitsThatAreNotThere() {
        assertThatThrownBy(() -> new ReserveTest(TestTruck.drawing(10), Set.of("siren"), 160, 25, 700))
                .hasMessage("circuits under test are [siren]; name at least one of [continuous, other]");
    }

    private static DutyOutcome reserve(double loadA) {
        ReserveTest test = new ReserveTest(TestTruck.drawing(loadA), CONTINUOUS, TestTruck.RESERVE_MIN, 25, 700);
        return test.judge(run(test));
    }

    private static DutyOutcome ambulance(Vehicle truck, double highIdleRpm) {
        IdleBalanceTest test = new IdleBalanceTest(truck, IdleBalanceTest.Rule.AMBULANCE, CONTINUOUS, highIdleRpm);
        return test.judge(run(test));
    }

    private static DutyOutcome balance(double loadA) {
        return balance(TestTruck.drawing(loadA));
    }

    private static DutyOutcome balance(Vehicle truck) {
        IdleBalanceTest test = new IdleBalanceTest(
                truck, IdleBalanceTest.Rule.FIRE_APPARATUS, CONTINUOUS, 1800 / TestTruck.PULLEY_RATIO);
        return test.judge(run(test));
    }

    private static DutyOutcome alarm(double warningV) {
        LowVoltageAlarmTest first = alarmTest(warningV, 20_000);
        double reachedS = first.reachedS(run(first)).orElseThrow();
        LowVoltageAlarmTest second = first.endingAfter(reachedS);
        assertThat(second.reachedS(run(second)).orElseThrow()).isCloseTo(reachedS, within(1e-3));
        return second.judge(run(second));
    }

    private static LowVoltageAlarmTest alarmTest(double warningV, double offS) {
        return new LowVoltageAlarmTest(TestTruck.drawing(20, TestTruck.cutoff(warningV, 8)), CONTINUOUS, offS, 25, 700);
    }

    private static RunResult run(DutyTest test) {
        return Simulation.of(test.vehicle(), test.scene()).run(Recorder.none());
    }
}

package curbwatt.engine.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.result.BatteryDay;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Roster;
import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class RosterStudyTest {
    private static final DayPlan EASY = Duty.shift(1800, 2400);
    private static final DayPlan HARD = Duty.shift(120, 3600);
    private static final DayPlan PARKED = Duty.parked();

    @Test
    void aShiftWithLongDrivesKeepsUp() {
        RosterResult result = study(EASY, 56);
        assertThat(result.course()).isEqualTo(Course.KEEPS_UP);
        assertThat(result.batteries().get(0).trend().orElseThrow().weeklyFraction())
                .isCloseTo(0, within(1e-6));
        assertThat(result.trips()).isZero();
        assertThat(result.days().get(0).starts()).isEqualTo(2);
        assertThat(result.days().get(1).starts()).isEqualTo(3);
        assertThat(result.days().get(0).engineRunS()).isCloseTo(5400, within(1e-3));
        assertThat(result.days().get(6).plan()).isEqualTo("parked");
    }

    @Test
    void aShiftWithShortDrivesDrainsUntilTheEngineDoesNotStart() {
        RosterResult result = study(HARD, 28);
        assertThat(result.course()).isEqualTo(Course.DOES_NOT_START);
        int failedDay = result.failedStartDay().orElseThrow();
        assertThat(failedDay).isBetween(3, 14);
        assertThat(result.lostMarginDay().orElseThrow()).isLessThanOrEqualTo(failedDay);
        assertThat(result.days().get(failedDay - 1).failedStarts()).isPositive();
        assertThat(result.days().subList(0, failedDay - 1)).allMatch(day -> day.failedStarts() == 0);
        assertThat(result.trips()).isPositive();
        BatteryDays battery = result.batteries().get(0);
        Day failed = result.days().get(failedDay - 1);
        assertThat(battery.endChargeFraction())
                .isEqualTo(failed.batteries().get(0).endChargeFraction());
        assertThat(battery).isEqualTo(study(HARD, failedDay).batteries().get(0));
    }

    @Test
    void aYearCloses() {
        RosterResult year = study(Duty.shift(420, 2400), 365);
        assertThat(year.run().steps()).isLessThan(1_000_000);
        ChargeLedger charge = year.run().charge();
        assertThat(charge.batteryRemainderAh()).isCloseTo(0, within(1e-6));
        assertThat(charge.nodeRemainderAh()).isCloseTo(0, within(1e-5));
        assertThat(year.run().energy().remainderWh())
                .isCloseTo(0, within(1e-3 * year.run().energy().alternatorWh()));
        assertThat(year.days()).hasSize(365);
        BatteryDays battery = year.batteries().get(0);
        assertThat(battery.throughput().dischargedAh() - battery.throughput().chargedAh())
                .isCloseTo(charge.deliveredAh(), within(1e-6));
        assertThat(battery.capacityAh() * (battery.startChargeFraction() - battery.endChargeFraction()))
                .isCloseTo(charge.removedAh(), within(1e-6));
        assertThat(battery.life().orElseThrow().lowDays())
                .isLessThan(battery.life().orElseThrow().highDays());
        assertThat(battery.cycles().byDepth(10).get(0).cycles()).isGreaterThan(365);
    }

    /** What the days say of each of two batteries adds up to what the run as a whole says of it. */
    @Test
    void daysOfTwoBatteriesAddUp() {
        Vehicle truck = Duty.truck();
        Vehicle two = new Vehicle(
                truck.name(),
                truck.battery(),
                Optional.of(new AuxiliaryBattery(
                        new BatteryInstallation("second", truck.battery().battery(), 18000),
                        0.9,
                        "relay",
                        new BatteryLink.ChargeRelay(13.3, 10, 12.7, 30, 0.004))),
                truck.alternator(),
                truck.circuits(),
                truck.cutoffs(),
                truck.starting());
        RosterResult result = new RosterStudy(two, Duty.roster(5, EASY)).run();
        assertThat(result.batteries()).extracting(BatteryDays::battery).containsExactly("battery", "second");
        for (int place = 0; place < 2; place++) {
            BatteryDays days = result.batteries().get(place);
            BatterySummary whole = result.run().batteries().get(place);
            assertThat(days.endChargeFraction()).isEqualTo(whole.endChargeFraction());
            assertThat(days.lowestChargeFraction()).isCloseTo(whole.lowestChargeFraction(), within(1e-12));
            assertThat(days.throughput().dischargedAh()).isCloseTo(whole.dischargedAh(), within(1e-9));
            assertThat(days.throughput().chargedAh()).isCloseTo(whole.chargedAh(), within(1e-9));
        }
        assertThat(result.days().stream().mapToDouble(Day::engineRunS).sum())
                .isCloseTo(result.run().engine().runS(), within(1e-6));
    }

    @Test
    void theSameStudyTwice() {
        assertThat(study(EASY, 14)).isEqualTo(study(EASY, 14));
    }

    /** Steps of half an hour against a hundredth of the tolerance: charge to 5e-6 of the capacity. */
    @Test
    void longStepsKeepTheCharge() {
        Roster roster = Duty.roster(14, HARD, EASY, EASY, EASY, PARKED, PARKED, PARKED);
        RosterStudy study = new RosterStudy(Duty.truck(), roster);
        RosterResult fine = study.run(Recorder.none(), new StepControl(5e-5, 1e-7, 15));
        RosterResult coarse = study.run();
        assertThat(coarse.run().steps()).isLessThan(fine.run().steps() / 3);
        for (int i = 0; i < 14; i++) {
            BatteryDay ours = coarse.days().get(i).batteries().get(0);
            BatteryDay exact = fine.days().get(i).batteries().get(0);
            assertThat(ours.endChargeFraction()).isCloseTo(exact.endChargeFraction(), within(5e-6));
            assertThat(ours.lowestChargeFraction()).isCloseTo(exact.lowestChargeFraction(), within(5e-6));
        }
    }

    /** Trips in watches and in nights, over weeks: to a second. */
    @Test
    void longStepsKeepTheTimesOfTrips() {
        Roster roster = Duty.roster(24, HARD);
        RosterStudy study = new RosterStudy(Duty.truck(), roster);
        List<Event> fine = trips(
                study.run(Recorder.none(), new StepControl(5e-5, 1e-7, 15)).run());
        List<Event> coarse = trips(study.run().run());
        assertThat(coarse).hasSameSizeAs(fine).isNotEmpty();
        for (int i = 0; i < fine.size(); i++) {
            assertThat(coarse.get(i).timeS()).isCloseTo(fine.get(i).timeS(), within(1.0));
        }
    }

    /** One day, every flash resolved, against the study of it. */
    @Test
    void steadyLoadsStandForTheResolvedDay() {
        Roster day = Duty.roster(1, EASY);
        RosterResult steady = new RosterStudy(Duty.truck(), day).run();
        RunResult resolved =
                Simulation.of(Duty.truck(), day.asScene()).run(Recorder.none(), StepControl.usual(), Fidelity.RESOLVED);
        double awayFraction = steady.run().endChargeFraction() - resolved.endChargeFraction();
        assertThat(awayFraction).isCloseTo(0, within(1e-3));
        assertThat(steady.run().charge().loadsAh())
                .isCloseTo(
                        resolved.charge().loadsAh(),
                        within(2e-3 * resolved.charge().loadsAh()));
        assertThat(resolved.steps()).isGreaterThan(10 * steady.run().steps());
    }

    /** The voltage falls slowly in a watch, so that a little swing is much time: a bound, and the direction. */
    @ParameterizedTest
    @CsvSource({"60, 60, 0.8, 1", "0, 60, 0.6, 0.8", "0, 0.1, 1.4, 2"})
    void timesOfTripsDependOnTheWaveform(double filterS, double delayS, double leastRatio, double mostRatio) {
        Vehicle truck = Duty.truck();
        Vehicle watching = new Vehicle(
                truck.name(),
                truck.battery(),
                truck.alternator(),
                truck.circuits(),
                List.of(Cutoffs.of("cutoff", filterS, 12.0, delayS, new RecloseRule.EngineRunning(), "warning")),
                truck.starting());
        Roster day = new Roster("day", new InitialState(0.6, 15), List.of(Duty.shift(120, 18_000)), 1);
        double steadyS =
                trips(new RosterStudy(watching, day).run().run()).get(0).timeS();
        double resolvedS = trips(Simulation.of(watching, day.asScene()).run(Recorder.none()))
                .get(0)
                .timeS();
        assertThat(steadyS / resolvedS).isBetween(leastRatio, mostRatio);
    }

    private static List<Event> trips(RunResult run) {
        return run.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .toList();
    }

    private static RosterResult study(DayPlan shift, int days) {
        return new RosterStudy(Duty.truck(), Duty.roster(days, shift, shift, shift, shift, shift, PARKED, PARKED))
                .run();
    }
}

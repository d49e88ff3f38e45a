package curbwatt.engine.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import curbwatt.engine.load.Loads;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.wear.CycleCount;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parked days in which nothing happens but key-off draw and self-discharge: all of it can be worked out by hand. */
class KeyOffPublishedTest {
    private static final String TOPIC = "Key-off draw";
    private static final double C20_PER_RESERVE_AH = 0.6;
    private static final DayPlan PARKED =
            DayPlan.parkedToItsEnd("parked", List.of(), "parked", AirTemperature.constant(15), Set.of());

    /** After 0.6 · RC · 40 % the battery is said not to start any more; the day on which that much is gone. */
    @ParameterizedTest
    @CsvSource({"100, 50, 20.0", "100, 100, 10.0"})
    void daysUntilFortyPercentAreGone(
            double reserveMin, double drawMilliA, double publishedDays, TestReporter reporter) {
        RosterResult result = study(bench(reserveMin, drawMilliA), 25);
        double goneAh = 0.4 * 0.6 * reserveMin;
        int full = (int) result.days().stream()
                .filter(day -> takenAh(result, day.day()) < goneAh - 1e-6)
                .count();
        double beforeAh = full == 0 ? 0 : takenAh(result, full);
        double ourDays = full + (goneAh - beforeAh) / (takenAh(result, full + 1) - beforeAh);
        new Published(
                        TOPIC,
                        "RC " + reserveMin + " min, " + drawMilliA + " mA: until 40 % of 0.6 · RC are gone",
                        "days",
                        publishedDays,
                        1e-6,
                        Obtained.DERIVED,
                        "rule in a battery seller's public guide: 0.6 Ah per minute of reserve, no start after 40 %")
                .check(ourDays, reporter);
    }

    @ParameterizedTest
    @CsvSource({"130, 35", "95, 49"})
    void eightDaysAtTenthOfAnAmpere(double reserveMin, double publishedPercent, TestReporter reporter) {
        RosterResult result = study(bench(reserveMin, 100), 8);
        double takenAh = takenAh(result, 8);
        new Published(
                        TOPIC,
                        "100 mA for 8 days, RC " + reserveMin + " min",
                        "Ah",
                        19.2,
                        1e-6,
                        Obtained.SEEN,
                        "worked example in a battery maker's public bulletin")
                .check(takenAh, reporter);
        new Published(
                        TOPIC,
                        "100 mA for 8 days, share of the charge that RC " + reserveMin + " min is at 25 A",
                        "%",
                        publishedPercent,
                        0.6,
                        Obtained.DERIVED,
                        "worked example in a battery maker's public bulletin")
                .check(100 * takenAh / (25 * reserveMin / 60), reporter);
    }

    /** 3 % of the capacity in a month of 730.5 h at 25 °C, half of that 10 K below. */
    @ParameterizedTest
    @CsvSource({"25, 0.03", "15, 0.015"})
    void selfDischargeAloneOverThirtyDays(double batteryC, double perMonthFraction) {
        DayPlan parked =
                DayPlan.parkedToItsEnd("parked", List.of(), "parked", AirTemperature.constant(batteryC), Set.of());
        RosterResult result = new RosterStudy(Duty.stripped(), Duty.roster(30, batteryC, parked)).run();
        double lostFraction = perMonthFraction * 30 * 24 / 730.5;
        assertThat(result.batteries().get(0).endChargeFraction()).isCloseTo(1 - lostFraction, within(1e-9));
    }

    @Test
    void aParkedVehicleCreepsDownByItsDraw() {
        RosterResult result = study(bench(100, 50), 21);
        BatteryDays battery = result.batteries().get(0);
        assertThat(battery.trend().orElseThrow().weeklyFraction())
                .isCloseTo(-7 * 1.2 / battery.capacityAh(), within(1e-9));
        assertThat(result.course()).isEqualTo(Course.CREEPS_DOWN);
        CycleCount cycles = battery.cycles();
        assertThat(cycles.cycles()).hasSize(1);
        assertThat(cycles.deepestFraction()).isCloseTo(21 * 1.2 / battery.capacityAh(), within(1e-9));
    }

    private static double takenAh(RosterResult result, int day) {
        return result.days().subList(0, day).stream()
                .mapToDouble(one -> one.batteries().get(0).dischargedAh())
                .sum();
    }

    private static Bench bench(double reserveMin, double drawMilliA) {
        return Bench.of(Bench.battery(Chemistry.FLOODED, C20_PER_RESERVE_AH * reserveMin, reserveMin, 700))
                .with(new Circuit("key off", 0, List.of(Loads.current("key-off draw", drawMilliA / 1000))));
    }

    private static RosterResult study(Bench bench, int days) {
        return new RosterStudy(bench.vehicle(), Duty.roster(days, 15, PARKED)).run();
    }
}

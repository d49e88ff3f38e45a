package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A battery that is charged again after a deep discharge, while bound charge still holds its surface down. */
class FullBatteryTest {

    private static Vehicle vehicle(Battery battery, double loadA, double pulleyRatio) {
        return new Vehicle(
                "truck",
                new BatteryInstallation("battery", battery, 18000),
                Optional.of(Vehicles.alternator(50, 120, pulleyRatio)),
                List.of(new Circuit("lamps", 0, List.of(Vehicles.steady("lamps", loadA, 0)))),
                List.of(Vehicles.cutoff(11.8, 30, 0, new RecloseRule.EngineRunning(), "lamps")),
                Vehicles.starting());
    }

    @ParameterizedTest
    @CsvSource({"FLOODED, 70, 120, 650", "AGM, 92, 160, 850"})
    void endsFullAndNotBeyond(Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA) {
        Battery battery = Vehicles.battery(chemistry, c20Ah, reserveMin, coldCrankingA);
        double[] mostCharge = {0};
        RunResult run = Simulation.of(
                        vehicle(battery, 23, 2.7),
                        Vehicles.scene(1, 20, Vehicles.off(6 * 3600, 20), Vehicles.idling(12 * 3600, 20, 900)))
                .run(step -> mostCharge[0] = Math.max(mostCharge[0], step.chargeEndFraction()));
        assertThat(run.events()).noneMatch(event -> event.kind() == EventKind.VOLTAGE_COLLAPSED);
        assertThat(mostCharge[0]).isCloseTo(1, within(1e-4));
        assertThat(run.charge().batteryRemainderAh())
                .isCloseTo(0, within(1e-9 * run.charge().loadsAh()));
    }

    /** A charge that broke off at its full height would begin again with the first self-discharge, thousands of times. */
    @Test
    void theChargeDiesAwayAndDoesNotBreakOff() {
        Battery battery = Vehicles.battery(Chemistry.AGM, 92, 160, 850);
        List<Double> currentsA = new ArrayList<>();
        Simulation.of(
                        vehicle(battery, 23, 2.7),
                        Vehicles.scene(1, 20, Vehicles.off(2 * 3600, 20), Vehicles.idling(12 * 3600, 20, 1500)))
                .run(step -> currentsA.add(step.batteryA()), StepControl.usual(), Fidelity.RESOLVED);
        double largestRiseA = 0;
        for (int i = currentsA.indexOf(Collections.min(currentsA)); i + 1 < currentsA.size(); i++) {
            largestRiseA = Math.max(largestRiseA, Math.abs(currentsA.get(i + 1) - currentsA.get(i)));
        }
        assertThat(currentsA.get(currentsA.size() - 1)).isCloseTo(0, within(0.5));
        assertThat(largestRiseA).isLessThan(2);
        assertThat(currentsA).hasSizeLessThan(10_000);
    }

    /** An alternator that gives a little more than the loads take, but not what its set-point would ask for. */
    @ParameterizedTest
    @CsvSource({"1", "0.2", "0.05"})
    void aSmallSurplusIsGassedAway(double surplusA) {
        Battery battery = Vehicles.flooded70();
        double outputA = Vehicles.alternator(50, 120, 2.7).maximumA(650);
        RunResult run = Simulation.of(
                        vehicle(battery, outputA - surplusA, 2.7),
                        Vehicles.scene(1, 20, Vehicles.idling(24 * 3600, 20, 650)))
                .run(Recorder.none());
        assertThat(run.events()).noneMatch(event -> event.kind() == EventKind.VOLTAGE_COLLAPSED);
        assertThat(run.endChargeFraction()).isCloseTo(1, within(1e-4));
        assertThat(run.charge().gassedAh()).isPositive();
    }
}

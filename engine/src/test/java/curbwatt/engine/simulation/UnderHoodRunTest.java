package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.powertrain.UnderHood;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the air under the hood does to whole runs: limiting cases, and cases with a closed solution. */
class UnderHoodRunTest {
    private static final double IDLE_RPM = 650;
    private static final double TIME_CONSTANT_S = 3600;

    /** At the temperature at which the pair holds, everything is as without a figure, to the last digit. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 70, 110})
    void atItsReferenceNothingChanges(double loadA) {
        Vehicle truck = truck(loadA, false, Optional.empty());
        assertThat(run(truck, idling(HotFactor.HOT_C))).isEqualTo(run(truck, Vehicles.idling(1800, 20, IDLE_RPM)));
    }

    /** A rise of nothing makes a battery in the engine space one in the air outside, to the last digit. */
    @Test
    void withoutARiseTheEngineSpaceIsOutside() {
        Phase off = Vehicles.off(3600, 5);
        RunResult inside = run(truck(10, true, Optional.of(UnderHood.none())), off);
        RunResult outside = run(truck(10, false, Optional.empty()), off);
        assertThat(inside).isEqualTo(outside);
    }

    /** Label 50/120 A, ratio 2.7: whatever the load, the hotter machine gives no more, and the battery no less. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 60, 70, 90, 110})
    void hotterNeverGivesMore(double loadA) {
        Vehicle truck = truck(loadA, false, Optional.empty());
        double cooler = Double.POSITIVE_INFINITY;
        for (double hoodC = -20; hoodC <= 110; hoodC += 10) {
            double hotter = run(truck, idling(hoodC)).charge().alternatorAh();
            assertThat(hotter).isLessThanOrEqualTo(cooler + 1e-9);
            cooler = hotter;
        }
    }

    /**
     * Label 50/120 A at 650 · 2.7 = 1755 /min: 76.95 A cold, 55.77 A hot by the published pair (share 0.7248); half-way,
     * at 59 °C, 66.36 A. A load of 90 A leaves 23.64 A to the battery.
     */
    @Test
    void halfWayBetweenColdAndHotHalfTheLossIsThere() {
        RunResult run = run(truck(90, false, Optional.empty()), idling(59));
        double coldA = Vehicles.alternator(50, 120, 2.7).output().maximumA(1755);
        double hotA = coldA * HotFactor.published().at(1755);
        assertThat(coldA).isCloseTo(76.95, within(0.01));
        assertThat(hotA).isCloseTo(55.77, within(0.01));
        assertThat(run.phases().get(0).alternatorCapacityA().orElseThrow()).isCloseTo(66.36, within(0.01));
        assertThat(run.phases().get(0).meanBatteryA()).isCloseTo(90 - 66.36, within(0.01));
    }

    /** A profile from 25 to 93 °C: the mean output is that of its middle, since the loss is straight in temperature. */
    @Test
    void followsAProfileStepByStep() {
        AirTemperature profile =
                new AirTemperature(List.of(new AirTemperature.Point(0, 25), new AirTemperature.Point(1800, 93)));
        Vehicle truck = truck(90, false, Optional.empty());
        double sliding = run(truck, Vehicles.idling(1800, 20, IDLE_RPM).underHood(profile))
                .charge()
                .alternatorAh();
        assertThat(sliding).isCloseTo(run(truck, idling(59)).charge().alternatorAh(), within(1e-5));
    }

    /** T = H − (H − T0) e^(−t/τ) under a constant hood; outside it stays as it is. */
    @Test
    void warmsABatteryInTheEngineSpace() {
        RunResult inside = run(truck(30, true, Optional.empty()), idling(80));
        RunResult outside = run(truck(30, false, Optional.empty()), idling(80));
        assertThat(endC(inside)).isCloseTo(80 - 60 * Math.exp(-1800 / TIME_CONSTANT_S), within(1e-9));
        assertThat(endC(outside)).isEqualTo(20);
    }

    /** Two time constants in a row: rise R with w, battery with τ, both from nothing. */
    @Test
    void warmsItThroughARisingHoodAsTheClosedSolutionSays() {
        double warmingS = 900;
        RunResult run = run(
                truck(30, true, Optional.of(new UnderHood(40, warmingS, 1800))), Vehicles.idling(1800, 20, IDLE_RPM));
        double slow = Math.exp(-1800 / TIME_CONSTANT_S);
        double lag = 40 * warmingS / (warmingS - TIME_CONSTANT_S) * (Math.exp(-1800 / warmingS) - slow);
        assertThat(endC(run)).isCloseTo(20 + 40 * (1 - slow) - lag, within(1e-3));
    }

    /** The engine warms its own alternator: the output sinks from cold to what the settled rise leaves. */
    @Test
    void theAlternatorLosesOutputAsTheEngineSpaceWarms() {
        Vehicle truck = truck(90, false, Optional.of(new UnderHood(73, 600, 1800)));
        RunResult run = run(truck, Vehicles.idling(600, 20, IDLE_RPM), named("later", 600), named("last", 7200));
        List<Double> givenA =
                run.phases().stream().map(phase -> phase.meanAlternatorA()).toList();
        assertThat(givenA.get(0)).isBetween(givenA.get(1), 76.95);
        assertThat(givenA.get(1)).isGreaterThan(givenA.get(2));
        assertThat(givenA.get(2)).isBetween(55.77, 56.5);
    }

    private static Phase named(String name, double durationS) {
        return Vehicles.idling(durationS, 20, IDLE_RPM).named(name);
    }

    private static Phase idling(double underHoodC) {
        return Vehicles.idling(1800, 20, IDLE_RPM).underHood(AirTemperature.constant(underHoodC));
    }

    private static double endC(RunResult run) {
        return run.crankChecks().get(run.crankChecks().size() - 1).batteryC();
    }

    private static RunResult run(Vehicle truck, Phase... phases) {
        return Simulation.of(truck, Vehicles.scene(0.9, 20, phases)).run(Recorder.none());
    }

    private static Vehicle truck(double loadA, boolean inEngineSpace, Optional<UnderHood> underHood) {
        return new Vehicle(
                "truck",
                new BatteryInstallation("battery", Vehicles.agm92(), TIME_CONSTANT_S, inEngineSpace),
                Optional.empty(),
                Optional.of(Vehicles.alternator(50, 120, 2.7)),
                List.of(new Circuit("lights", 0, List.of(Vehicles.steady("lamp", loadA, 0)))),
                List.of(),
                Vehicles.starting(),
                new EngineEquipment(Optional.empty(), Optional.empty(), Optional.empty(), underHood));
    }
}

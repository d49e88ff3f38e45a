package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.control.IdleTrigger;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.Load;
import curbwatt.engine.powertrain.Fuel;
import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.powertrain.IdleBurn;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Devices that act on the engine, in whole runs. */
class EngineDevicesTest {

    private static final FuelRate FUEL = new FuelRate(Fuel.PETROL, IdleBurn.through(650, 1.476), 0.67);

    private static Vehicle vehicle(EngineEquipment engine, Load... loads) {
        return new Vehicle(
                "truck",
                new BatteryInstallation("battery", Vehicles.agm92(), 18000),
                Optional.empty(),
                Optional.of(Vehicles.alternator(50, 120, 2.5)),
                List.of(new Circuit("equipment", 0.005, List.of(loads))),
                List.of(),
                Vehicles.starting(),
                engine);
    }

    private static List<Event> of(RunResult run, EventKind kind) {
        return run.events().stream().filter(event -> event.kind() == kind).toList();
    }

    @Test
    void highIdleCarriesWhatIdleDoesNot() {
        Load heavy = Vehicles.steady("heavy", 60, 0);
        HighIdleControl control = new HighIdleControl(
                "idle control", new IdleTrigger.BelowVoltage(new SensePoint.Node(), 12.9, 14.3), 5, 30, 60, 1300);
        RunResult without = Simulation.of(
                        vehicle(new EngineEquipment(Optional.empty(), Optional.empty(), Optional.of(FUEL)), heavy),
                        Vehicles.scene(0.95, 20, Vehicles.idling(2 * 3600, 20, 650)))
                .run(Recorder.none());
        RunResult with = Simulation.of(
                        vehicle(new EngineEquipment(Optional.of(control), Optional.empty(), Optional.of(FUEL)), heavy),
                        Vehicles.scene(0.95, 20, Vehicles.idling(2 * 3600, 20, 650)))
                .run(Recorder.none());
        assertThat(without.endChargeFraction()).isLessThan(0.9);
        assertThat(with.endChargeFraction()).isGreaterThan(0.95);
        assertThat(of(with, EventKind.IDLE_RAISED)).hasSize(1);
        assertThat(of(with, EventKind.IDLE_RAISED).get(0).timeS()).isGreaterThanOrEqualTo(5);
        assertThat(with.engine().raises()).isEqualTo(1);
        assertThat(with.engine().highIdleS())
                .isCloseTo(7200 - of(with, EventKind.IDLE_RAISED).get(0).timeS(), within(1e-3));
        assertThat(with.engine().fuelLitres().orElseThrow())
                .isGreaterThan(1.5 * without.engine().fuelLitres().orElseThrow());
    }

    /** Flashing makes the wish come and go: the delay is never over while the gaps reach above the level. */
    @Test
    void gapsOfAFlashStartTheDelayAnew() {
        Load flashing = Vehicles.flashing("head", 120, 0, 600, 300, 0);
        HighIdleControl control = new HighIdleControl(
                "idle control", new IdleTrigger.BelowVoltage(new SensePoint.Node(), 12.9, 14.3), 5, 30, 60, 1300);
        RunResult run = Simulation.of(
                        vehicle(
                                new EngineEquipment(Optional.of(control), Optional.empty(), Optional.empty()),
                                flashing),
                        Vehicles.scene(0.98, 20, Vehicles.idling(600, 20, 650)))
                .run(Recorder.none());
        assertThat(run.lowestV()).isLessThan(12.9);
        assertThat(of(run, EventKind.IDLE_RAISED)).isEmpty();
    }

    @Test
    void automaticStartKeepsAStandingSceneUp() {
        Load load = Vehicles.steady("equipment", 25, -1);
        AutomaticStart device = new AutomaticStart(
                "automatic start",
                new SensePoint.Node(),
                12.0,
                30,
                600,
                OptionalDouble.empty(),
                0,
                OptionalDouble.of(1800),
                900);
        RunResult run = Simulation.of(
                        vehicle(new EngineEquipment(Optional.empty(), Optional.of(device), Optional.of(FUEL)), load),
                        Vehicles.scene(0.95, 20, Vehicles.driving(60, 20, 1500), Vehicles.off(8 * 3600, 20)))
                .run(Recorder.none());
        List<Event> starts = of(run, EventKind.ENGINE_STARTED);
        assertThat(starts)
                .hasSizeBetween(2, 12)
                .allMatch(event -> event.subject().equals("automatic start"));
        List<Event> stops = of(run, EventKind.ENGINE_STOPPED);
        assertThat(stops.get(1).timeS() - starts.get(0).timeS()).isCloseTo(1800, within(1e-3));
        assertThat(run.engine().starts()).isEqualTo(starts.size());
        assertThat(run.charge().starterAh()).isCloseTo(starts.size() * 150 * 3 / 3600.0, within(1e-6));
        assertThat(run.lowestV()).isGreaterThan(9.6);
        assertThat(run.charge().nodeRemainderAh())
                .isCloseTo(0, within(1e-9 * run.charge().loadsAh()));
        assertThat(run.energy().remainderWh())
                .isCloseTo(0, within(1e-5 * run.energy().loadsWh()));
    }

    /** Delays of whole seconds end where flashes have their edges, or a rounding beside them. */
    @ParameterizedTest
    @ValueSource(doubles = {100, 300, 900, 700.1})
    void delaysThatEndOnAFlashEdgeEnd(double periodMs) {
        AutomaticStart device = new AutomaticStart(
                "automatic start",
                new SensePoint.Node(),
                12.7,
                30,
                600,
                OptionalDouble.empty(),
                0,
                OptionalDouble.of(600),
                900);
        RunResult run = Simulation.of(
                        vehicle(
                                new EngineEquipment(Optional.empty(), Optional.of(device), Optional.empty()),
                                Vehicles.steady("equipment", 15, -1),
                                Vehicles.flashing("head", 10, 0, periodMs, 0.4 * periodMs, 0)),
                        Vehicles.scene(0.8, 20, Vehicles.driving(60.3, 20, 1500), Vehicles.off(3 * 3600, 20)))
                .run(Recorder.none());
        List<Event> starts = of(run, EventKind.ENGINE_STARTED);
        List<Event> stops = of(run, EventKind.ENGINE_STOPPED);
        assertThat(starts).hasSizeGreaterThan(10);
        for (int i = 0; i + 1 < starts.size(); i++) {
            assertThat(stops.get(i + 1).timeS() - starts.get(i).timeS()).isCloseTo(600, within(1e-3));
        }
    }

    @Test
    void aBatteryThatIsTooLowIsTriedOnce() {
        AutomaticStart device = new AutomaticStart(
                "automatic start",
                new SensePoint.Node(),
                12.0,
                30,
                600,
                OptionalDouble.of(5),
                60,
                OptionalDouble.empty(),
                900);
        RunResult run = Simulation.of(
                        vehicle(
                                new EngineEquipment(Optional.empty(), Optional.of(device), Optional.empty()),
                                Vehicles.steady("equipment", 10, -1)),
                        Vehicles.scene(0.06, -25, Vehicles.off(3600, -25)))
                .run(Recorder.none());
        assertThat(of(run, EventKind.ENGINE_STARTED)).isEmpty();
        assertThat(of(run, EventKind.ENGINE_DID_NOT_START)).hasSize(1);
    }
}

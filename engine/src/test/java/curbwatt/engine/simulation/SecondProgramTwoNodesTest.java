package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.MeasuredOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Two batteries against a second program, as {@link SecondProgramTest} for one: it solves the two voltages by nested
 * root
 * finding where this one solves the link's current, and a third solution in the two battery currents agrees with it.
 */
class SecondProgramTwoNodesTest {

    private static final Alternator NINETY_AMPERES = new Alternator(
            new MeasuredOutputCurve(
                    List.of(new MeasuredOutputCurve.Point(0, 0), new MeasuredOutputCurve.Point(10000, 1000))),
            new HotFactor(1, 1),
            new VoltageRegulator(14.4, 0, 12, 16),
            1,
            0);

    private static Vehicle vehicle(
            Battery second,
            double secondCharge,
            BatteryLink link,
            SensePoint sense,
            double tripV,
            double filterS,
            List<Load> chassis,
            List<Load> equipment) {
        return new Vehicle(
                "truck",
                new BatteryInstallation("starter battery", Vehicles.flooded70(), 864000),
                Optional.of(new AuxiliaryBattery(
                        new BatteryInstallation("auxiliary battery", second, 864000), secondCharge, "link", link)),
                Optional.of(NINETY_AMPERES),
                List.of(new Circuit("chassis", 0, chassis), new Circuit("equipment", BusNode.EQUIPMENT, 0, equipment)),
                List.of(new LowVoltageCutoff(
                        "cutoff",
                        sense,
                        filterS,
                        0,
                        OptionalDouble.empty(),
                        tripV,
                        60,
                        new RecloseRule.ByHand(),
                        OptionalDouble.empty(),
                        Set.of("equipment"))),
                Vehicles.starting());
    }

    private static Load load(String name, double ratedA, double ratedV, double exponent, String... stages) {
        return new Load(
                name, ratedA, ratedV, exponent, 0, DropOut.never(), new LoadPattern.Continuous(), Set.of(stages));
    }

    private static Event trip(RunResult run) {
        return run.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSolidLinkBetweenDifferentBatteries() {
        Vehicle vehicle = vehicle(
                Vehicles.agm92(),
                0.5,
                new BatteryLink.Solid(0.002),
                new SensePoint.Node(),
                11.9,
                2,
                List.of(load("chassis", 5, 12.8, 0), load("fan", 3, 13.5, 1)),
                List.of(load("computer", 12, 12.8, -1), load("lamps", 6, 13.5, 0.55)));
        RunResult run = Simulation.of(vehicle, Vehicles.scene(0.95, 25, Vehicles.off(10800, 25)))
                .run(Recorder.none());
        assertThat(trip(run).timeS()).isCloseTo(4062.856, within(0.05));
        assertThat(trip(run).voltageV()).isCloseTo(11.894886, within(1e-4));
        assertThat(run.batteries().get(0).endChargeFraction()).isCloseTo(0.5568527, within(1e-6));
        assertThat(run.batteries().get(1).endChargeFraction()).isCloseTo(0.3268895, within(1e-6));
        assertThat(run.link().orElseThrow().peakA()).isCloseTo(14.385, within(0.01));
    }

    @Test
    void aDiodeThatConductsAgainWhenTheAuxiliaryBatteryIsLow() {
        Vehicle vehicle = vehicle(
                Vehicles.battery(Chemistry.FLOODED, 105, 195, 800),
                0.3,
                new BatteryLink.Diode(0.6, 0.003),
                new SensePoint.EquipmentNode(),
                11.7,
                0,
                List.of(load("engine", 14, 13.5, 1, "engine"), load("parked", 3, 12.8, 0)),
                List.of(load("computer", 6, 12.8, -1), load("lamps", 10, 13.5, 0.55, "scene")));
        Scene scene = new Scene(
                "scene",
                new InitialState(0.9, 25),
                List.of(
                        new Phase("drive", EngineMode.DRIVING, 1800, 25, EngineSpeed.constant(900), Set.of("engine")),
                        new Phase("off", EngineMode.OFF, 7200, 25, EngineSpeed.constant(0), Set.of("scene"))));
        RunResult run = Simulation.of(vehicle, scene).run(Recorder.none());
        assertThat(trip(run).timeS()).isCloseTo(7699.882, within(0.05));
        assertThat(trip(run).voltageV()).isCloseTo(11.697112, within(1e-4));
        assertThat(run.batteries().get(0).endChargeFraction()).isCloseTo(0.8519352, within(5e-6));
        assertThat(run.batteries().get(1).endChargeFraction()).isCloseTo(0.3061723, within(5e-6));
    }
}

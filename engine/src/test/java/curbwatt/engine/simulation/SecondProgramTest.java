package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Whole scenes against a second program.
 *
 * <p>The expected figures come from a program in another language, written from the equations in docs/ alone by
 * somebody who
 * had not seen this code; two of its trips were confirmed by a third program that steps 1 ms at a time. Agreement
 * shows that
 * the equations are solved as written, not that they are right.
 */
class SecondProgramTest {

    private static final double TRIP_S = 0.05;
    private static final double VOLTAGE_V = 1e-4;
    private static final double CHARGE = 1e-6;

    private static Circuit threeHeads(double secondPhaseMs, double thirdPhaseMs) {
        return new Circuit(
                "equipment",
                0,
                List.of(
                        Vehicles.steady("computer", 4, -1),
                        Vehicles.steady("camera", 2, 0),
                        Vehicles.flashing("head 1", 8, -1, 600, 250, 0),
                        Vehicles.flashing("head 2", 8, -1, 600, 250, secondPhaseMs),
                        Vehicles.flashing("head 3", 8, -1, 600, 250, thirdPhaseMs)));
    }

    private static Event trip(RunResult run) {
        return run.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void simultaneousHeadsAndAComparatorWithoutFilter() {
        Vehicle vehicle = Vehicles.vehicle(
                Vehicles.flooded70(),
                List.of(threeHeads(0, 0)),
                Vehicles.cutoff(11.8, 30, 0, new RecloseRule.ByHand(), "equipment"));
        TraceRecorder trace = new TraceRecorder(60, List.of("equipment"));
        RunResult run = Simulation.of(vehicle, Vehicles.scene(1, 25, Vehicles.off(9000, 25)))
                .run(trace);
        assertThat(trip(run).timeS()).isCloseTo(6129.600, within(TRIP_S));
        assertThat(trip(run).stateOfChargeFraction()).isCloseTo(0.5880537775, within(CHARGE));
        TraceRow firstMinute = trace.trace().rows().get(1);
        assertThat(firstMinute.nodeMinV()).isCloseTo(12.276633, within(VOLTAGE_V));
        assertThat(firstMinute.nodeMaxV()).isCloseTo(12.459146, within(VOLTAGE_V));
        assertThat(firstMinute.batteryMeanA()).isCloseTo(16.55655, within(1e-4));
    }

    private static Vehicle farSensing() {
        Load radio = new Load("radio", 10, 13.6, -1, 0, DropOut.never(), new LoadPattern.Duty(3, 60, 10, 0), Set.of());
        Circuit equipment = new Circuit(
                "equipment",
                0.022,
                List.of(
                        Vehicles.steady("dock", 6, -1),
                        Vehicles.flashing("bar 1", 12, -1, 500, 200, 0),
                        Vehicles.flashing("bar 2", 12, -1, 500, 200, 250),
                        radio));
        Circuit chassis = new Circuit("chassis", 0, List.of(Vehicles.steady("chassis", 1.5, 1)));
        LowVoltageCutoff cutoff = new LowVoltageCutoff(
                "cutoff",
                new SensePoint.FeedEnd("equipment"),
                0,
                0,
                OptionalDouble.of(12),
                11.8,
                20,
                new RecloseRule.ByHand(),
                OptionalDouble.empty(),
                Set.of("equipment"));
        return Vehicles.vehicle(Vehicles.agm92(), List.of(equipment, chassis), cutoff);
    }

    @Test
    void constantPowerBehindAFeedSensedAtItsEnd() {
        RunResult run = Simulation.of(farSensing(), Vehicles.scene(1, 25, Vehicles.off(4 * 3600, 25)))
                .run(Recorder.none());
        assertThat(trip(run).timeS()).isCloseTo(6252.750, within(TRIP_S));
        assertThat(trip(run).stateOfChargeFraction()).isCloseTo(0.6468890158, within(CHARGE));
        assertThat(trip(run).voltageV()).isCloseTo(11.43831, within(VOLTAGE_V));
        assertThat(run.endChargeFraction()).isCloseTo(0.6122746214, within(CHARGE));
    }

    @Test
    void filterOfFiveSecondsOverHeadsInTurn() {
        Vehicle vehicle = Vehicles.vehicle(
                Vehicles.flooded70(),
                List.of(threeHeads(200, 400)),
                Vehicles.cutoff(11.8, 30, 5, new RecloseRule.ByHand(), "equipment"));
        RunResult run = Simulation.of(vehicle, Vehicles.scene(1, 25, Vehicles.off(9000, 25)))
                .run(Recorder.none());
        assertThat(trip(run).timeS()).isCloseTo(5202.800, within(TRIP_S));
    }

    @Test
    void idlingWithAnAlternatorThatCarriesTheGapsOnly() {
        Alternator alternator = new Alternator(
                ReactanceOutputCurve.through(AlternatorLabel.of(55, 130)),
                new HotFactor(0.67, 0.67),
                new VoltageRegulator(14.05, 0, 13.2, 15.2),
                2.8,
                0);
        assertThat(alternator.maximumA(650)).isCloseTo(59.06598675, within(1e-7));
        Battery battery = Vehicles.flooded70();
        Circuit equipment = new Circuit(
                "equipment",
                0,
                List.of(
                        load("base", 43, 13.5, 0),
                        load("blower", 6, 13.5, 1),
                        Vehicles.flashing("bar 1", 14, -1, 800, 300, 0),
                        Vehicles.flashing("bar 2", 14, -1, 800, 300, 150)));
        Vehicle vehicle = new Vehicle(
                "truck",
                new BatteryInstallation("battery", battery, 18000),
                Optional.of(alternator),
                List.of(equipment),
                List.of(),
                Vehicles.starting());
        TraceRecorder trace = new TraceRecorder(60, List.of("equipment"));
        RunResult run = Simulation.of(vehicle, Vehicles.scene(0.9, 25, Vehicles.idling(7200, 25, 650)))
                // its last digits: those of the reference
                .run(trace, StepControl.usual(), Fidelity.RESOLVED);
        assertThat(run.endChargeFraction()).isCloseTo(0.8819960316, within(CHARGE));
        assertThat(run.charge().gassedAh()).isCloseTo(0.03040645687, within(1e-6));
        assertThat(run.charge().alternatorAh()).isCloseTo(118.1130056, within(1e-4));
        TraceRow firstMinute = trace.trace().rows().get(1);
        assertThat(firstMinute.nodeMinV()).isCloseTo(12.273834, within(VOLTAGE_V));
        assertThat(firstMinute.nodeMaxV()).isCloseTo(14.05, within(VOLTAGE_V));
        assertThat(firstMinute.batteryMeanA()).isCloseTo(1.0172, within(1e-4));
    }

    @Test
    void aFeedThatCannotCarryItsPower() {
        // the power behind 93 mΩ is out of reach once the node falls below √(4 R P)
        double powerW = 360;
        double feedOhm = 0.093;
        Circuit inverter = new Circuit("inverter", feedOhm, List.of(load("inverter", powerW / 12, 12, -1)));
        RunResult run = Simulation.of(
                        Vehicles.vehicle(Vehicles.flooded70(), List.of(inverter)),
                        Vehicles.scene(1, 25, Vehicles.off(4 * 3600, 25)))
                .run(Recorder.none());
        Event collapse = run.events().stream()
                .filter(event -> event.kind() == EventKind.VOLTAGE_COLLAPSED)
                .findFirst()
                .orElseThrow();
        assertThat(collapse.subject()).isEqualTo("inverter");
        assertThat(collapse.timeS()).isCloseTo(1414.413483, within(TRIP_S));
        // the last voltage before it, where the current rises ever more steeply
        assertThat(collapse.voltageV()).isCloseTo(Math.sqrt(4 * feedOhm * powerW), within(5e-3));
    }

    private static Load load(String name, double ratedA, double ratedV, double exponent) {
        return new Load(name, ratedA, ratedV, exponent, 0, DropOut.never(), new LoadPattern.Continuous(), Set.of());
    }
}

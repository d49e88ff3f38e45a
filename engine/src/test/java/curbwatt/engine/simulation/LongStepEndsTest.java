package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Wherever in a turn of the clocks a long step ends, the battery is where edge by edge leaves it: seen in its voltage a second
 * later, a microvolt apart at most.
 */
class LongStepEndsTest {

    private static final StepControl FINE = new StepControl(1e-4, 1e-7, 1.5);
    private static final double VOLTAGE_V = 1e-6;
    private static final double CHARGE = 1e-6;

    private static Vehicle truck(Load... besidesLamps) {
        List<Load> loads = new ArrayList<>(List.of(
                Vehicles.steady("computer", 8, 0),
                Vehicles.flashing("left", 8, 0, 800, 400, 0),
                Vehicles.flashing("right", 8, 0, 800, 400, 0)));
        loads.addAll(List.of(besidesLamps));
        return Vehicles.vehicle(
                Vehicles.flooded70(),
                List.of(new Circuit("equipment", 0, loads)),
                Vehicles.cutoff(8, 30, 0, new RecloseRule.ByHand(), "equipment"));
    }

    private static RunResult run(Vehicle truck, double lengthS, StepControl control, Fidelity fidelity) {
        Phase last = new Phase("look", EngineMode.OFF, 1, 25, EngineSpeed.constant(0), Set.of());
        return Simulation.of(truck, Vehicles.scene(1, 25, Vehicles.off(lengthS, 25), last))
                .run(Recorder.none(), control, fidelity);
    }

    private static void endsAlike(Vehicle truck, double lengthS) {
        RunResult longSteps = run(truck, lengthS, StepControl.usual(), Fidelity.ENVELOPE);
        RunResult edgeByEdge = run(truck, lengthS, FINE, Fidelity.RESOLVED);
        assertThat(longSteps.steps()).isLessThan(edgeByEdge.steps() / 2);
        assertThat(longSteps.endChargeFraction()).isCloseTo(edgeByEdge.endChargeFraction(), within(CHARGE));
        assertThat(endV(longSteps)).isCloseTo(endV(edgeByEdge), within(VOLTAGE_V));
    }

    private static double endV(RunResult run) {
        return run.events().get(run.events().size() - 1).voltageV();
    }

    @ParameterizedTest
    @ValueSource(doubles = {70, 600, 600.3, 600.5, 671, 1200.2, 3600.7})
    void betweenTwoFlashes(double lengthS) {
        endsAlike(truck(), lengthS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {130, 611, 613.5, 1200, 1211.3, 2400, 3640.7})
    void betweenTwoCallsOfARadio(double lengthS) {
        endsAlike(truck(Loads.patterned("radio", 10, new LoadPattern.Duty(3, 60, 10, 0))), lengthS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {130, 613.5, 1211.3, 3640.7})
    void betweenFlashesOfClocksOfTheirOwn(double lengthS) {
        endsAlike(
                truck(
                        Vehicles.flashing("beacon", 6, 0, 638.297872, 200, 0),
                        Loads.patterned("radio", 10, new LoadPattern.Duty(3, 60, 10, 0))),
                lengthS);
    }

    /** Edges cut the steps of edge by edge at every line, so that both tell of the same instants. */
    @Test
    void theChargeOnTheWayIsThatOfEdgeByEdge() {
        Vehicle truck = truck(Loads.patterned("radio", 10, new LoadPattern.Duty(3, 60, 10, 0)));
        List<Double> longSteps = charges(truck, StepControl.usual(), Fidelity.ENVELOPE);
        List<Double> edgeByEdge = charges(truck, FINE, Fidelity.RESOLVED);
        assertThat(longSteps).hasSameSizeAs(edgeByEdge).hasSizeGreaterThan(60);
        for (int i = 0; i < longSteps.size(); i++) {
            assertThat(longSteps.get(i)).as("line %s", i).isCloseTo(edgeByEdge.get(i), within(CHARGE));
        }
    }

    private static List<Double> charges(Vehicle truck, StepControl control, Fidelity fidelity) {
        TraceRecorder trace = new TraceRecorder(20, List.of("equipment"));
        Simulation.of(truck, Vehicles.scene(1, 25, Vehicles.off(1800, 25))).run(trace, control, fidelity);
        return trace.trace().rows().stream()
                .map(TraceRow::stateOfChargeFraction)
                .toList();
    }
}

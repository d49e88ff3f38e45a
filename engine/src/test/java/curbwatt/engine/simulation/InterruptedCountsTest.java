package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A level that lies within the waveform for an hour: every flash dips below it, every pause is above. */
class InterruptedCountsTest {

    private static final double SCENE_S = 9000;
    /** More than a step a minute would be walking from flash to flash. */
    private static final long FEW_STEPS = 150;

    /** Edge by edge is the reference; two heads on clocks of their own repeat nothing, two on one repeat their cycle. */
    @ParameterizedTest
    @CsvSource({"500, 5", "505, 5", "500, 60", "505, 60"})
    void tripsAsEdgeByEdgeInFewSteps(double secondPeriodMs, double delayS) {
        Simulation simulation = Simulation.of(truck(secondPeriodMs, delayS), scene());

        RunResult fast = simulation.run(Recorder.none());
        RunResult exact = simulation.run(Recorder.none(), StepControl.usual(), Fidelity.RESOLVED);

        assertThat(trip(fast).timeS()).isCloseTo(trip(exact).timeS(), within(1.0));
        assertThat(fast.steps()).isLessThan(FEW_STEPS);
        // the level did lie within the waveform long before, or the test would show nothing
        assertThat(firstDipS(simulation)).isLessThan(trip(exact).timeS() - 1200);
    }

    /** A delay shorter than a flash is over within the first that is deep enough. */
    @ParameterizedTest
    @CsvSource({"500", "505"})
    void aShortDelayIsOverWithinAFlash(double secondPeriodMs) {
        Simulation simulation = Simulation.of(truck(secondPeriodMs, 0.2), scene());

        RunResult fast = simulation.run(Recorder.none());
        RunResult exact = simulation.run(Recorder.none(), StepControl.usual(), Fidelity.RESOLVED);

        assertThat(trip(fast).timeS()).isCloseTo(trip(exact).timeS(), within(1.0));
    }

    private static double firstDipS(Simulation simulation) {
        double[] firstS = {Double.POSITIVE_INFINITY};
        simulation.run(step -> {
            if (step.nodeLowestV() < 12.05 && step.startS() > 10) {
                firstS[0] = Math.min(firstS[0], step.startS());
            }
        });
        return firstS[0];
    }

    private static Event trip(RunResult result) {
        return result.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .findFirst()
                .orElseThrow();
    }

    private static Vehicle truck(double secondPeriodMs, double delayS) {
        Circuit lamps = new Circuit(
                "lamps",
                0.01,
                List.of(
                        Vehicles.steady("scene light", 8, 0),
                        Vehicles.flashing("left head", 10, -1, 500, 250, 0),
                        Vehicles.flashing("right head", 10, -1, secondPeriodMs, 250, 0)));
        return Vehicles.vehicle(
                Vehicles.agm92(), List.of(lamps), Vehicles.cutoff(12.05, delayS, 0, new RecloseRule.ByHand(), "lamps"));
    }

    private static Scene scene() {
        return Vehicles.scene(0.95, 20, Vehicles.off(SCENE_S, 20));
    }
}

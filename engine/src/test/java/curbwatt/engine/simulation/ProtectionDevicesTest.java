package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SheddingStep;
import curbwatt.engine.control.StagedCutoff;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.Load;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.wiring.FuseRating;
import curbwatt.engine.wiring.FuseType;
import curbwatt.engine.wiring.InstalledFuse;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fuses and staged shedding in whole runs. */
class ProtectionDevicesTest {

    private static final InstalledFuse TEN = new InstalledFuse(new FuseRating(FuseType.BLADE, 10), 20);

    private static RunResult fused(Load load, double durationS) {
        Circuit circuit = new Circuit("lamps", BusNode.STARTER, 0, Optional.of(TEN), List.of(load));
        return Simulation.of(
                        Vehicles.vehicle(Vehicles.agm92(), List.of(circuit)),
                        Vehicles.scene(1, 20, Vehicles.off(durationS, 20)))
                .run(Recorder.none());
    }

    private static List<Event> of(RunResult run, EventKind kind) {
        return run.events().stream().filter(event -> event.kind() == kind).toList();
    }

    @Test
    void aFuseHoldsItsRating() {
        assertThat(of(fused(Vehicles.steady("lamp", 9.9, 0), 3600), EventKind.FUSE_OPENED))
                .isEmpty();
    }

    @Test
    void aFuseOpensUnderSustainedOverloadAtItsTypicalTime() {
        RunResult run = fused(Vehicles.steady("lamp", 20, 0), 3600);
        Event opened = of(run, EventKind.FUSE_OPENED).get(0);
        assertThat(opened.timeS()).isCloseTo(TEN.opensInS(0, 20), within(1e-6));
        assertThat(opened.timeS()).isBetween(TEN.earliestS(20), TEN.latestS(20));
        assertThat(run.circuits().get(0).firstLostS().orElseThrow()).isEqualTo(opened.timeS());
    }

    /** Flashing at twice the rating for half the time heats as long as it is lit and cools between. */
    @Test
    void flashingOverloadOpensLater() {
        RunResult steady = fused(Vehicles.steady("lamp", 20, 0), 3600);
        RunResult flashing = fused(Vehicles.flashing("lamp", 20, 0, 1000, 500, 0), 3600);
        double steadyS = of(steady, EventKind.FUSE_OPENED).get(0).timeS();
        double flashingS = of(flashing, EventKind.FUSE_OPENED).get(0).timeS();
        assertThat(flashingS).isBetween(1.3 * steadyS, 3 * steadyS + 1);
    }

    /** Heads that keep a fuse over its rating, or take it there at each flash, on one clock or on two of their own. */
    @ParameterizedTest
    @CsvSource({"11.5, 0.3, 500", "11.8, 0.3, 2000", "12.2, 0.3, 505", "9.8, 2.5, 500", "10.2, 2.5, 505"})
    void flashesOpenAFuseWhenTheyDoEdgeByEdgeInFewSteps(double steadyA, double headA, double secondPeriodMs) {
        List<Load> loads = List.of(
                Vehicles.steady("board", steadyA, -1),
                Vehicles.flashing("head 1", headA, -1, 500, 200, 0),
                Vehicles.flashing("head 2", headA, -1, secondPeriodMs, 0.4 * secondPeriodMs, 100));
        Circuit circuit = new Circuit("lamps", BusNode.STARTER, 0.01, Optional.of(TEN), loads);
        Simulation simulation = Simulation.of(
                Vehicles.vehicle(Vehicles.agm92(), List.of(circuit)),
                Vehicles.scene(1, 20, Vehicles.off(3 * 3600, 20)));

        RunResult fast = simulation.run(Recorder.none());
        RunResult exact = simulation.run(Recorder.none(), StepControl.usual(), Fidelity.RESOLVED);

        assertThat(of(fast, EventKind.FUSE_OPENED).get(0).timeS())
                .isCloseTo(of(exact, EventKind.FUSE_OPENED).get(0).timeS(), within(1e-3));
        assertThat(fast.steps()).isLessThan(100);
    }

    @Test
    void stepsShedBeforeTheCutoffAndInTheirOrder() {
        List<Circuit> circuits = List.of(
                new Circuit("scene lights", 0, List.of(Vehicles.steady("light", 15, -1))),
                new Circuit("computer", 0, List.of(Vehicles.steady("dock", 5, -1))),
                new Circuit("radios", 0, List.of(Vehicles.steady("radio", 3, -1))));
        RecloseRule byHand = new RecloseRule.ByHand();
        LowVoltageCutoff last = Vehicles.cutoff(11.4, 60, 1, byHand, "radios");
        StagedCutoff staged = new StagedCutoff(
                last,
                List.of(
                        new SheddingStep("first step", 12.1, 30, byHand, Set.of("scene lights")),
                        new SheddingStep("second step", 11.8, 30, byHand, Set.of("computer"))),
                Set.of());
        Vehicle vehicle = Vehicles.vehicle(
                Vehicles.flooded70(), circuits, staged.devices().toArray(LowVoltageCutoff[]::new));
        RunResult run = Simulation.of(vehicle, Vehicles.scene(1, 20, Vehicles.off(20 * 3600, 20)))
                .run(Recorder.none());
        assertThat(of(run, EventKind.CUTOFF_TRIPPED))
                .extracting(Event::subject)
                .containsExactly("first step", "second step", "cutoff");
        // shedding buys time: without the steps the radios would be cut with the rest
        RunResult unstaged = Simulation.of(
                        Vehicles.vehicle(
                                Vehicles.flooded70(),
                                circuits,
                                Vehicles.cutoff(11.4, 60, 1, byHand, "radios", "computer", "scene lights")),
                        Vehicles.scene(1, 20, Vehicles.off(20 * 3600, 20)))
                .run(Recorder.none());
        double stagedS = of(run, EventKind.CUTOFF_TRIPPED).get(2).timeS();
        assertThat(stagedS)
                .isGreaterThan(
                        1.5 * of(unstaged, EventKind.CUTOFF_TRIPPED).get(0).timeS());
    }
}

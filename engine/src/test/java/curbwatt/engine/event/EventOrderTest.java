package curbwatt.engine.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.label.DischargeCurve;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.Loads;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One test for each rule of docs/events-rules.md about what goes first, named after it. */
class EventOrderTest {
    private static final Circuit STEADY = new Circuit("a", 0, List.of(Loads.current("steady", 20)));
    private static final Circuit SECOND = new Circuit("b", 0, List.of(Loads.current("second", 20)));
    private static final RecloseRule BY_HAND = new RecloseRule.ByHand();
    private final Bench bench = Bench.usual().with(STEADY);

    @Test
    void rule15APhaseChangesInAFixedOrder() {
        Bench driven = bench.with(Bench.alternator(80, 14.2, 0))
                .with(Cutoffs.of("guard", 0, 12.4, 10, new RecloseRule.EngineRunning(), "a"));
        Story story = new Story(driven.run(driven.off("wait", 60), driven.idling("go", 60), driven.off("end", 60))
                .events());
        assertThat(story.at(60)).containsExactly("PHASE_BEGAN go", "ENGINE_STARTED go", "CUTOFF_RECLOSED guard");
        assertThat(story.at(120)).startsWith("PHASE_BEGAN end", "ENGINE_STOPPED end");
    }

    @Test
    void rule16DevicesActBeforeThePhaseChanges() {
        // the level is passed at once, so the delay is over exactly when the phase is
        Bench guarded = bench.with(Cutoffs.byHand("guard", 12.6, 60, "a"));
        Story story = new Story(
                guarded.run(guarded.off("one", 60), guarded.off("two", 60)).events());
        assertThat(story.at(60)).containsExactly("CUTOFF_TRIPPED guard", "PHASE_BEGAN two");
    }

    @Test
    void rule17OneDeviceActsAndTheOthersAreAskedAnew() {
        Bench both = bench.with(SECOND);
        double levelV = 11.8;
        Story saved = new Story(both.with(Cutoffs.byHand("first", levelV, 10, "a"))
                .with(Cutoffs.byHand("other", levelV, 10, "b"))
                .run(both.off("p", 7200))
                .events());
        double crossedS = 3600 * new DischargeCurve(Bench.SEVENTY, 25, 40).timeToH(levelV);
        List<Event> trips = saved.of(EventKind.CUTOFF_TRIPPED);
        assertThat(trips.get(0).subject()).isEqualTo("first");
        assertThat(trips.get(0).timeS()).isCloseTo(crossedS + 10, within(0.1));
        // with the first load gone the voltage is over the level again: the second is spared for a long while
        assertThat(trips.size() < 2 || trips.get(1).timeS() > crossedS + 600).isTrue();
    }

    @Test
    void rule18DevicesThatStillAgreeActAtTheSameInstantInTheVehiclesOrder() {
        LowVoltageCutoff slow = Cutoffs.of("other", 30, 11.8, 10, BY_HAND, "b");
        Bench both = bench.with(SECOND).with(slow).with(Cutoffs.of("first", 30, 11.8, 10, BY_HAND, "a"));
        Story story = new Story(both.run(both.off("p", 7200)).events());
        assertThat(story.lines(EventKind.CUTOFF_TRIPPED))
                .containsExactly("CUTOFF_TRIPPED other", "CUTOFF_TRIPPED first");
        List<Double> timesS = story.timesS(EventKind.CUTOFF_TRIPPED);
        assertThat(timesS.get(1)).isEqualTo(timesS.get(0));
    }

    @Test
    void rule19CutoffsGoBeforeLoads() {
        Load radio = Loads.dropping(Loads.current("radio", 20), new DropOut(11.8, 12.2, 5));
        Bench both = Bench.usual()
                .with(new Circuit("b", 0, List.of(radio)))
                .with(STEADY)
                .with(Cutoffs.byHand("guard", 11.8, 0, "a"));
        Story story = new Story(both.run(both.off("p", 7200)).events());
        String first = story.lines(EventKind.CUTOFF_TRIPPED, EventKind.LOAD_DROPPED_OUT)
                .get(0);
        assertThat(first).isEqualTo("CUTOFF_TRIPPED guard");
    }

    @Test
    void rule20AnEdgeOnAPhasesEndBelongsToTheNextPhase() {
        Load beacon = Loads.patterned("beacon", 10, Loads.flashing("k", 2000, 0, 0, 1000), "on");
        Bench flashing = Bench.usual().with(new Circuit("a", 0, List.of(beacon)));
        RunResult run = flashing.run(
                flashing.off("one", 1, "on"), flashing.off("two", 1, "on"), flashing.off("three", 2, "on"));
        assertThat(run.phases().stream().map(phase -> Math.round(1e6 * phase.meanLoadA())))
                .containsExactly(10_000_000L, 0L, 5_000_000L);
    }

    @Test
    void rule21AClockRunsOnWhileItsLoadsAreOff() {
        Load beacon = Loads.patterned("beacon", 10, Loads.flashing("k", 2000, 0, 0, 1000), "on");
        Bench flashing = Bench.usual().with(new Circuit("a", 0, List.of(beacon)));
        RunResult run =
                flashing.run(flashing.off("dark", 5), flashing.off("lit", 1, "on"), flashing.off("next", 1, "on"));
        assertThat(run.phases().get(1).meanLoadA()).isCloseTo(0, within(1e-9));
        assertThat(run.phases().get(2).meanLoadA()).isCloseTo(10, within(1e-9));
    }

    @Test
    void rule22AnEngineThatDoesNotStartStaysOffThroughThePhase() {
        Bench flat = bench.from(0.05, -15).with(Bench.alternator(80, 14.2, 0));
        RunResult run = flat.run(flat.off("wait", 10), flat.idling("go", 60));
        Story story = new Story(run.events());
        assertThat(story.at(10)).startsWith("PHASE_BEGAN go", "ENGINE_DID_NOT_START go");
        assertThat(run.phases().get(1).meanAlternatorA()).isZero();
    }
}

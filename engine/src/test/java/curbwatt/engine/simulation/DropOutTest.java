package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import curbwatt.engine.battery.label.DischargeCurve;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.event.Story;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.result.LoadSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class DropOutTest {
    private static final Load RADIO = Loads.dropping(Loads.current("radio", 5), new DropOut(11.5, 12, 5));

    @Test
    void fallsSilentWhenItsOwnVoltagePassesItsLevel() {
        Bench bench = Bench.usual().with(new Circuit("c", 0.02, List.of(Loads.current("rest", 15), RADIO)));
        RunResult run = bench.run(bench.off("p", 4 * 3600));
        // 20 A through 20 mΩ: the node stands 0.4 V above the radio
        double expectedS = 3600 * new DischargeCurve(Bench.SEVENTY, 25, 20).timeToH(11.9);
        LoadSummary radio = run.loads().get(1);
        assertThat(radio.firstDropOutS().orElseThrow()).isCloseTo(expectedS, within(0.1));
        assertThat(new Story(run.events()).of(EventKind.LOAD_DROPPED_OUT).get(0).voltageV())
                .isCloseTo(11.5, within(1e-6));
        assertThat(run.loads().get(0).firstDropOutS()).isEmpty();
    }

    /** A load that sags the battery below its level by itself would chatter; hysteresis keeps it silent. */
    @Test
    void hysteresisKeepsItSilentWhileTheVoltageRecoversBelowTheReturnLevel() {
        Bench bench = Bench.usual()
                .from(0.3, 25)
                .with(new Circuit(
                        "c", 0, List.of(Loads.dropping(Loads.current("pump", 40), new DropOut(11.6, 12.3, 5)))));
        RunResult run = bench.run(bench.off("p", 3600));
        LoadSummary pump = run.loads().get(0);
        assertThat(pump.dropOuts()).isEqualTo(1);
        assertThat(pump.droppedOutS()).isCloseTo(3600 - pump.firstDropOutS().orElseThrow(), withPercentage(1e-6));
        assertThat(new Story(run.events()).of(EventKind.LOAD_RETURNED)).isEmpty();
    }

    @Test
    void returnsAfterTheReturnVoltageHasHeldForTheDelay() {
        Load heavy = Loads.current("winch", 400, "pull");
        Bench bench = Bench.usual().with(new Circuit("c", 0, List.of(heavy, RADIO)));
        RunResult run = bench.run(bench.off("pull", 20, "pull"), bench.off("rest", 60));
        Story story = new Story(run.events());
        assertThat(story.only(EventKind.LOAD_DROPPED_OUT).timeS()).isLessThan(20);
        double backS = story.only(EventKind.LOAD_RETURNED).timeS();
        assertThat(backS).isGreaterThanOrEqualTo(25 - 1e-6);
        assertThat(run.loads().get(1).droppedOutS())
                .isCloseTo(backS - story.only(EventKind.LOAD_DROPPED_OUT).timeS(), within(1e-6));
    }

    /** An interruption shorter than the delay, by a flashing load that pulls the node down, keeps it out. */
    @Test
    void aDipDuringTheReturnDelayStartsItAnew() {
        Load winch = Loads.patterned("winch", 400, new LoadPattern.Duty(1, 4, 0, 0), "pull");
        Bench bench = Bench.usual().with(new Circuit("c", 0, List.of(winch, RADIO)));
        Story story = new Story(
                bench.run(bench.off("pull", 41, "pull"), bench.off("rest", 60)).events());
        assertThat(story.only(EventKind.LOAD_DROPPED_OUT).timeS()).isLessThan(1);
        // the last pull is from 40 to 41 s
        assertThat(story.only(EventKind.LOAD_RETURNED).timeS()).isBetween(46 - 1e-6, 50.0);
    }

    @Test
    void silentItDrawsNothingNotEvenItsStandby() {
        Load radio = Loads.withStandby(RADIO, 1);
        Bench bench = Bench.usual()
                .with(new Circuit("strong", 0, List.of(Loads.current("winch", 400))))
                .with(new Circuit("c", 0, List.of(radio)));
        RunResult run = bench.run(bench.off("p", 60));
        double outS = run.loads().get(1).firstDropOutS().orElseThrow();
        assertThat(run.circuits().get(1).chargeAh()).isCloseTo(5 * outS / 3600, within(1e-9));
    }

    @Test
    void betweenItsOnTimesItCannotDropOut() {
        Load beacon = Loads.dropping(
                Loads.patterned("beacon", 5, new LoadPattern.Duty(1, 10, 9, 0)), new DropOut(11.5, 12, 5));
        Bench bench = Bench.usual().with(new Circuit("c", 0, List.of(Loads.current("winch", 400), beacon)));
        Story story = new Story(bench.run(bench.off("p", 20)).events());
        assertThat(story.only(EventKind.LOAD_DROPPED_OUT).timeS()).isCloseTo(9, within(1e-6));
    }

    @Test
    void switchedOffByItsStageItForgetsThatItWasSilent() {
        Load radio = Loads.dropping(Loads.current("radio", 5, "talk"), new DropOut(11.5, 13, 600));
        Load winch = Loads.current("winch", 400, "pull");
        Bench bench = Bench.usual().with(new Circuit("c", 0, List.of(winch, radio)));
        RunResult run = bench.run(
                bench.off("pull", 20, "pull", "talk"), bench.off("pause", 10), bench.off("again", 10, "talk"));
        assertThat(run.loads().get(1).dropOuts()).isEqualTo(1);
        assertThat(run.phases().get(2).meanLoadA()).isCloseTo(5, within(1e-9));
    }

    @Test
    void disconnectedAndFedAgainItStartsAnew() {
        Load radio = Loads.dropping(Loads.current("radio", 5), new DropOut(11.9, 15, 600));
        Bench bench = Bench.usual()
                .with(new Circuit("strong", 0, List.of(Loads.current("winch", 400, "pull"))))
                .with(new Circuit("c", 0, List.of(radio)))
                .with(Cutoffs.of("guard", 0, 11.8, 10, new RecloseRule.AboveVoltage(12, 5), "c"));
        RunResult run = bench.run(bench.off("pull", 30, "pull"), bench.off("rest", 60));
        Story story = new Story(run.events());
        assertThat(story.of(EventKind.CUTOFF_RECLOSED)).hasSize(1);
        assertThat(story.of(EventKind.LOAD_RETURNED)).isEmpty();
        double closedS = story.only(EventKind.CUTOFF_RECLOSED).timeS();
        double outS = run.loads().get(1).firstDropOutS().orElseThrow();
        assertThat(run.circuits().get(1).chargeAh()).isCloseTo(5 * (outS + 90 - closedS) / 3600, within(1e-8));
    }

    /** Level and return level at one place, no delay: it chatters, but not without end in one instant. */
    @Test
    void withoutHysteresisAndDelayTimeStillPasses() {
        Bench bench = Bench.usual()
                .from(0.3, 25)
                .with(new Circuit("c", 0, List.of(Loads.dropping(Loads.current("pump", 40), new DropOut(12, 12, 0)))));
        RunResult run = bench.run(bench.off("p", 10));
        assertThat(run.loads().get(0).dropOuts()).isBetween(50, 101);
    }
}

package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.label.DischargeCurve;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.event.Story;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** One test for each rule of docs/events-rules.md about devices, named after it. */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class EventRulesTest {
    /** 20 A for ever: the node crosses a level at a time known in closed form. */
    private static final Circuit STEADY = new Circuit("a", 0, List.of(Loads.current("steady", 20)));

    private static final RecloseRule BY_VOLTAGE = new RecloseRule.AboveVoltage(12.2, 5);
    private static final Load PULL = Loads.current("winch", 400, "pull");
    private final Bench bench = Bench.usual().with(STEADY);

    @Test
    void rule01ACrossingIsLocatedAndNotRoundedToAStep() {
        for (double levelV : new double[] {12.0, 11.8, 11.5, 11.0}) {
            Story story = story(bench.with(Cutoffs.byHand("guard", levelV, 0, "a")));
            assertThat(story.only(EventKind.CUTOFF_TRIPPED).timeS()).isCloseTo(crossingS(levelV), within(0.05));
            assertThat(story.only(EventKind.CUTOFF_TRIPPED).voltageV()).isCloseTo(levelV, within(1e-6));
        }
    }

    @Test
    void rule02ADelayRunsFromTheCrossingItself() {
        double atOnceS = tripS(Cutoffs.byHand("guard", 11.8, 0, "a"));
        assertThat(tripS(Cutoffs.byHand("guard", 11.8, 33.3, "a"))).isCloseTo(atOnceS + 33.3, within(0.02));
    }

    @Test
    void rule03ALevelTouchedFromBelowStartsTheDelayAnew() {
        // 0.5 s of rest in every 20 s lifts the node over the level
        Load load = Loads.patterned("beacon", 30, new LoadPattern.Duty(19.5, 20, 0, 0));
        Bench flashing = Bench.usual().from(0.6, 25).with(new Circuit("a", 0, List.of(load)));
        RunResult longer = run(flashing.with(Cutoffs.byHand("guard", 11.9, 19.6, "a")), 600);
        RunResult shorter = run(flashing.with(Cutoffs.byHand("guard", 11.9, 19.4, "a")), 600);
        assertThat(new Story(longer.events()).of(EventKind.CUTOFF_TRIPPED)).isEmpty();
        assertThat(new Story(shorter.events()).of(EventKind.CUTOFF_TRIPPED)).hasSize(1);
    }

    @Test
    void rule04BelowIsStrictAndAboveIncludesTheLevel() {
        Bench resting = Bench.usual().with(new Circuit("a", 0, List.of(Loads.current("nothing", 0))));
        double restV = run(resting, 1).lowestV();
        assertThat(story(resting.with(Cutoffs.byHand("guard", restV, 0, "a"))).of(EventKind.CUTOFF_TRIPPED))
                .isEmpty();
        assertThat(story(resting.with(Cutoffs.byHand("guard", restV + 1e-9, 0, "a")))
                        .of(EventKind.CUTOFF_TRIPPED))
                .hasSize(1);
    }

    @Test
    void rule05TheReadingDecidesAfterErrorAndFilter() {
        LowVoltageCutoff wrong = Cutoffs.sensing(Cutoffs.byHand("guard", 11.8, 0, "a"), new SensePoint.Node(), -0.1);
        assertThat(tripS(wrong)).isCloseTo(crossingS(11.9), within(0.05));
        // a voltage that falls straight is read a time constant late, nearly
        LowVoltageCutoff slow = Cutoffs.of("guard", 60, 11.8, 0, new RecloseRule.ByHand(), "a");
        assertThat(tripS(slow)).isCloseTo(crossingS(11.8) + 60, within(1.0));
    }

    @Test
    void rule06AtAFeedsEndTheDropIsInTheReadingUntilTheContactOpens() {
        Bench fed = Bench.usual().with(new Circuit("a", 0.01, List.of(Loads.current("steady", 20))));
        LowVoltageCutoff far = Cutoffs.sensing(
                Cutoffs.of("guard", 0, 11.8, 0, new RecloseRule.AboveVoltage(12.5, 1), "a"),
                new SensePoint.FeedEnd("a"),
                0);
        Event trip = story(fed.with(far)).of(EventKind.CUTOFF_TRIPPED).get(0);
        assertThat(trip.timeS()).isCloseTo(crossingS(12.0), within(0.05));
        assertThat(trip.voltageV()).isCloseTo(11.8, within(1e-6));
    }

    @Test
    void rule07ATripLatchesUntilItsRuleClosesIt() {
        LowVoltageCutoff byVoltage = Cutoffs.of("guard", 0, 11.8, 1, BY_VOLTAGE, "a");
        Bench pulled = Bench.usual().with(new Circuit("a", 0, List.of(PULL)));
        Story closes = new Story(pulled.with(byVoltage)
                .run(pulled.off("pull", 30, "pull"), pulled.off("rest", 30))
                .events());
        double openedS = closes.of(EventKind.CUTOFF_TRIPPED).get(0).timeS();
        assertThat(closes.timesS(EventKind.CUTOFF_RECLOSED).get(0) - openedS).isGreaterThanOrEqualTo(5 - 1e-6);
        Story stays = new Story(pulled.with(Cutoffs.byHand("guard", 11.8, 1, "a"))
                .run(pulled.off("pull", 30, "pull"), pulled.off("rest", 30), pulled.idling("drive", 60))
                .events());
        assertThat(stays.of(EventKind.CUTOFF_TRIPPED)).hasSize(1);
        assertThat(stays.of(EventKind.CUTOFF_RECLOSED)).isEmpty();
    }

    @Test
    void rule08ARunTimeLimitCountsFromTheEnginesStopAndOpensForTheEngine() {
        LowVoltageCutoff limited = Cutoffs.limited(Cutoffs.of("guard", 0, 6, 0, BY_VOLTAGE, "a"), 100);
        Bench driven = bench.with(Bench.alternator(80, 14.2, 0)).with(limited);
        Story story = new Story(
                driven.run(driven.idling("a", 50), driven.off("b", 130), driven.idling("c", 20), driven.off("d", 150))
                        .events());
        assertThat(story.lines(EventKind.RUN_TIME_LIMIT_REACHED, EventKind.CUTOFF_RECLOSED))
                .containsExactly(
                        "RUN_TIME_LIMIT_REACHED guard", "CUTOFF_RECLOSED guard", "RUN_TIME_LIMIT_REACHED guard");
        assertThat(story.timesS(EventKind.RUN_TIME_LIMIT_REACHED).get(0)).isCloseTo(150, within(1e-6));
        assertThat(story.timesS(EventKind.RUN_TIME_LIMIT_REACHED).get(1)).isCloseTo(300, within(1e-6));
        assertThat(story.only(EventKind.CUTOFF_RECLOSED).timeS()).isCloseTo(180, within(1e-6));
    }

    @Test
    void rule09AWarningBeginsAtOnceAndEndsAfterFiveMinutes() {
        Bench warned = Bench.usual()
                .with(new Circuit("a", 0, List.of(PULL)))
                .with(Cutoffs.warning(Cutoffs.byHand("guard", 10, 5, "a"), 11.9));
        Story story = new Story(warned.run(
                        warned.off("pull", 1, "pull"),
                        warned.off("pause", 200),
                        warned.off("again", 1, "pull"),
                        warned.off("rest", 400))
                .events());
        assertThat(story.only(EventKind.WARNING_BEGAN).timeS()).isZero();
        assertThat(story.only(EventKind.WARNING_ENDED).timeS()).isBetween(502.0, 503.0);
    }

    @Test
    void rule10ALoadDropsOutAtOnceAndOnlyWhileLit() {
        Load lamp = Loads.dropping(
                Loads.patterned("lamp", 1, new LoadPattern.Duty(10, 20, 10, 0)), new DropOut(11.6, 12.2, 5));
        Bench dark = Bench.usual().with(new Circuit("a", 0, List.of(PULL, lamp)));
        Story story = new Story(dark.run(dark.off("pull", 15, "pull")).events());
        assertThat(story.only(EventKind.LOAD_DROPPED_OUT).timeS()).isCloseTo(10, within(1e-9));
    }

    @Test
    void rule11ALoadReturnsAfterItsDelayWithoutABreak() {
        Load radio = Loads.dropping(Loads.current("radio", 1), new DropOut(11.6, 12, 5));
        Bench silent = Bench.usual().with(new Circuit("a", 0, List.of(PULL, radio)));
        Story story = new Story(silent.run(
                        silent.off("pull", 15, "pull"),
                        silent.off("pause", 4),
                        silent.off("again", 3, "pull"),
                        silent.off("rest", 20))
                .events());
        assertThat(story.only(EventKind.LOAD_RETURNED).timeS()).isBetween(27 - 1e-6, 28.0);
    }

    @Test
    void rule12AReturnTakesATenthOfASecondAtLeast() {
        LowVoltageCutoff hasty = Cutoffs.of("guard", 0, 12, 0, new RecloseRule.AboveVoltage(12.05, 0), "a");
        Story story = new Story(
                run(Bench.usual().from(0.5, 25).with(STEADY).with(hasty), 10).events());
        List<Double> openedS = story.timesS(EventKind.CUTOFF_TRIPPED);
        List<Double> closedS = story.timesS(EventKind.CUTOFF_RECLOSED);
        assertThat(closedS).hasSizeGreaterThan(10);
        for (int i = 0; i < closedS.size(); i++) {
            assertThat(closedS.get(i) - openedS.get(i)).isGreaterThanOrEqualTo(0.1 - 1e-9);
        }
    }

    @Test
    void rule13ACollapsedCircuitIsSilentUntilTheNextPhase() {
        Circuit weak = new Circuit("weak", 0.35, List.of(Loads.power("heater", 120, "on")));
        Bench collapsing = Bench.usual().from(0.3, 25).with(STEADY).with(weak);
        RunResult run = collapsing.run(collapsing.off("a", 1000, "on"), collapsing.off("b", 100, "on"));
        Story story = new Story(run.events());
        assertThat(story.lines(EventKind.VOLTAGE_COLLAPSED).get(0)).isEqualTo("VOLTAGE_COLLAPSED weak");
        assertThat(story.of(EventKind.VOLTAGE_COLLAPSED)).hasSizeLessThanOrEqualTo(2);
        assertThat(run.circuits().get(1).lostBy()).isEqualTo("weak");
        assertThat(run.circuits().get(0).firstLostS()).isEmpty();
    }

    @Test
    void rule14EventsStandInOrderOfTime() {
        Bench busy = bench.with(Cutoffs.warning(Cutoffs.of("guard", 2, 11.9, 10, BY_VOLTAGE, "a"), 12.1))
                .with(new Circuit("b", 0, List.of(Loads.patterned("beacon", 20, Loads.flashing("k", 800, 0, 0, 300)))));
        List<Event> events = run(busy, 4 * 3600).events();
        assertThat(events)
                .isSortedAccordingTo(Comparator.comparingDouble(Event::timeS))
                .hasSizeGreaterThan(5);
        assertThat(run(busy, 4 * 3600).events()).isEqualTo(events);
    }

    private static double crossingS(double levelV) {
        return 3600 * new DischargeCurve(Bench.SEVENTY, 25, 20).timeToH(levelV);
    }

    private double tripS(LowVoltageCutoff cutoff) {
        return story(bench.with(cutoff)).only(EventKind.CUTOFF_TRIPPED).timeS();
    }

    private static Story story(Bench on) {
        return new Story(run(on, 4 * 3600).events());
    }

    private static RunResult run(Bench on, double durationS) {
        return on.run(on.off("p", durationS));
    }
}

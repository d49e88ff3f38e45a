package curbwatt.engine.simulation.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.simulation.clock.LevelTimer;
import org.junit.jupiter.api.Test;

class CutoffStateTest {
    private static final RecloseRule ABOVE = new RecloseRule.AboveVoltage(12.6, 10);

    @Test
    void tripsTheDelayAfterARampCrossedTheLevel() {
        CutoffState state = new CutoffState(Cutoffs.byHand("c", 11.8, 30, "x"));
        state.sense(100, 12, 11);
        assertThat(state.nextActionS(false)).isCloseTo(50, within(1e-12));
        take(state, 50, 12, 11.5);
        assertThat(state.act()).isEqualTo(EventKind.CUTOFF_TRIPPED);
        assertThat(state.isOpen()).isTrue();
    }

    @Test
    void aDipShorterThanTheDelayStartsItAnew() {
        CutoffState state = new CutoffState(Cutoffs.byHand("c", 11.8, 30, "x"));
        take(state, 29.9, 11.7, 11.7);
        take(state, 0.1, 11.9, 11.9);
        state.sense(60, 11.7, 11.7);
        assertThat(state.nextActionS(false)).isEqualTo(30);
    }

    @Test
    void filterHoldsTheDipsOffTheComparator() {
        CutoffState state = new CutoffState(Cutoffs.of("c", 5, 11.8, 0, ABOVE, "x"));
        take(state, 100, 12.2, 12.2);
        for (int i = 0; i < 100; i++) {
            state.sense(0.2, 11.4, 11.4);
            assertThat(state.nextActionS(false)).isInfinite();
            take(state, 0.2, 11.4, 11.4);
            take(state, 0.3, 12.2, 12.2);
        }
        // it settles about the mean, 11.88 V
        assertThat(state.readingEndV()).isBetween(11.8, 11.95);
    }

    @Test
    void filterStartsAtTheFirstVoltageItSees() {
        CutoffState state = new CutoffState(Cutoffs.of("c", 5, 11.8, 0, ABOVE, "x"));
        state.sense(10, 12.5, 12.5);
        assertThat(state.readingStartV()).isEqualTo(12.5);
        assertThat(state.readingEndV()).isEqualTo(12.5);
    }

    @Test
    void sensorErrorShiftsTheTrip() {
        LowVoltageCutoff exact = Cutoffs.byHand("c", 11.8, 0, "x");
        CutoffState early = new CutoffState(Cutoffs.sensing(exact, new SensePoint.Node(), -0.1));
        early.sense(100, 12, 11);
        assertThat(early.nextActionS(false)).isCloseTo(10, within(1e-9));
        CutoffState late = new CutoffState(Cutoffs.sensing(exact, new SensePoint.Node(), 0.1));
        late.sense(100, 12, 11);
        assertThat(late.nextActionS(false)).isCloseTo(30, within(1e-9));
    }

    @Test
    void warnsOnceAndClearsAfterFiveMinutesAbove() {
        CutoffState state = new CutoffState(Cutoffs.warning(Cutoffs.byHand("c", 11, 0, "x"), 12));
        state.sense(10, 12.5, 11.5);
        assertThat(state.nextActionS(false)).isCloseTo(5, within(1e-12));
        take(state, 5, 12.5, 12);
        assertThat(state.act()).isEqualTo(EventKind.WARNING_BEGAN);
        // dips and short recoveries change nothing
        for (int i = 0; i < 5; i++) {
            state.sense(299, 12.2, 12.2);
            assertThat(state.nextActionS(false)).isInfinite();
            take(state, 299, 12.2, 12.2);
            take(state, 1, 11.9, 11.9);
        }
        state.sense(400, 12.2, 12.2);
        assertThat(state.nextActionS(false)).isEqualTo(300);
        take(state, 300, 12.2, 12.2);
        assertThat(state.act()).isEqualTo(EventKind.WARNING_ENDED);
        state.sense(10, 12.2, 11.2);
        assertThat(state.nextActionS(false)).isCloseTo(2, within(1e-9));
    }

    @Test
    void reclosesAfterItsDelayAboveAndTripsAnewOnlyAfterAFullDelay() {
        CutoffState state = new CutoffState(Cutoffs.of("c", 0, 11.8, 30, ABOVE, "x"));
        trip(state);
        state.sense(9.9, 12.7, 12.7);
        assertThat(state.nextActionS(false)).isInfinite();
        take(state, 9.9, 12.7, 12.7);
        take(state, 1, 12.5, 12.5);
        state.sense(20, 12.7, 12.7);
        assertThat(state.nextActionS(false)).isEqualTo(10);
        take(state, 10, 12.7, 12.7);
        assertThat(state.act()).isEqualTo(EventKind.CUTOFF_RECLOSED);
        assertThat(state.isOpen()).isFalse();
        state.sense(40, 11.5, 11.5);
        assertThat(state.nextActionS(false)).isEqualTo(30);
    }

    @Test
    void aVoltageAboveTheRecloseLevelBeforeTheTripDoesNotCount() {
        CutoffState state = new CutoffState(Cutoffs.of("c", 0, 11.8, 0, ABOVE, "x"));
        take(state, 1000, 13, 13);
        state.sense(1, 11, 11);
        assertThat(state.nextActionS(false)).isZero();
        take(state, 0, 11, 11);
        state.act();
        state.sense(60, 12.7, 12.7);
        assertThat(state.nextActionS(false)).isEqualTo(10);
    }

    @Test
    void byHandItStaysOpen() {
        CutoffState state = new CutoffState(Cutoffs.byHand("c", 11.8, 0, "x"));
        trip(state);
        state.sense(1e6, 14, 14);
        assertThat(state.nextActionS(true)).isInfinite();
        assertThat(state.closesOnEngine()).isFalse();
        assertThat(state.isOpen()).isTrue();
    }

    @Test
    void onEngineItClosesWhenTheEngineRunsAndNeverByVoltage() {
        CutoffState state = new CutoffState(Cutoffs.of("c", 0, 11.8, 0, new RecloseRule.EngineRunning(), "x"));
        assertThat(state.closesOnEngine()).isFalse();
        trip(state);
        state.sense(1e6, 14, 14);
        assertThat(state.nextActionS(false)).isInfinite();
        assertThat(state.closesOnEngine()).isTrue();
        assertThat(state.isOpen()).isFalse();
    }

    @Test
    void trippedByVoltageWithAVoltageRuleItDoesNotCloseOnTheEngine() {
        CutoffState state = new CutoffState(Cutoffs.of("c", 0, 11.8, 0, ABOVE, "x"));
        trip(state);
        assertThat(state.closesOnEngine()).isFalse();
    }

    @Test
    void runTimeLimitCountsWithTheEngineOffAloneAndOpensForTheEngineAlone() {
        CutoffState state = new CutoffState(Cutoffs.limited(Cutoffs.of("c", 0, 11.8, 30, ABOVE, "x"), 3600));
        state.sense(2000, 12.5, 12.5);
        state.advance(false);
        state.sense(5000, 13.8, 13.8);
        assertThat(state.nextActionS(true)).isInfinite();
        state.advance(true);
        state.sense(4000, 12.5, 12.5);
        assertThat(state.nextActionS(false)).isEqualTo(3600);
        take(state, 3600, 12.5, 12.5);
        assertThat(state.act()).isEqualTo(EventKind.RUN_TIME_LIMIT_REACHED);
        state.sense(1000, 13, 13);
        assertThat(state.nextActionS(false)).isInfinite();
        assertThat(state.closesOnEngine()).isTrue();
    }

    @Test
    void aLimitWithAHandRuleWaitsForTheHand() {
        CutoffState state = new CutoffState(Cutoffs.limited(Cutoffs.byHand("c", 11.8, 30, "x"), 60));
        take(state, 60, 12.5, 12.5);
        state.sense(1, 12.5, 12.5);
        assertThat(state.nextActionS(false)).isZero();
        assertThat(state.act()).isEqualTo(EventKind.RUN_TIME_LIMIT_REACHED);
        assertThat(state.closesOnEngine()).isFalse();
    }

    @Test
    void atOneInstantTheContactGoesBeforeTheWarningAndTheTripBeforeTheLimit() {
        LowVoltageCutoff all = Cutoffs.limited(Cutoffs.warning(Cutoffs.byHand("c", 11.8, 20, "x"), 11.8), 20);
        CutoffState state = new CutoffState(all);
        take(state, 20, 11.8, 11.8);
        // the limit is over now; warning and trip see 11.7 V for the first time
        state.sense(100, 11.7, 11.7);
        assertThat(state.nextActionS(false)).isZero();
        assertThat(state.act()).isEqualTo(EventKind.RUN_TIME_LIMIT_REACHED);
        CutoffState both = new CutoffState(Cutoffs.limited(Cutoffs.byHand("c", 11.8, 20, "x"), 20));
        both.sense(100, 11.7, 11.7);
        assertThat(both.nextActionS(false)).isEqualTo(20);
        assertThat(both.act()).isEqualTo(EventKind.CUTOFF_TRIPPED);
    }

    /** Without delays a sag would open and close it for ever in one instant: the contact needs time to move. */
    @Test
    void zeroDelaysDoNotSwitchWithoutEndInOneInstant() {
        CutoffState state = new CutoffState(Cutoffs.of("c", 0, 11.8, 0, new RecloseRule.AboveVoltage(12.2, 0), "x"));
        state.sense(1, 11.2, 11.2);
        assertThat(state.nextActionS(false)).isZero();
        take(state, 0, 11.2, 11.2);
        assertThat(state.act()).isEqualTo(EventKind.CUTOFF_TRIPPED);
        state.sense(1, 12.6, 12.6);
        assertThat(state.nextActionS(false)).isEqualTo(LevelTimer.LEAST_RETURN_S);
    }

    private static void trip(CutoffState state) {
        double tripDelayS = state.settings.tripDelayS();
        state.sense(tripDelayS, 11, 11);
        assertThat(state.nextActionS(false)).isEqualTo(tripDelayS);
        state.advance(false);
        assertThat(state.act()).isEqualTo(EventKind.CUTOFF_TRIPPED);
    }

    private static void take(CutoffState state, double lengthS, double fromV, double toV) {
        state.sense(lengthS, fromV, toV);
        state.advance(false);
    }
}

package curbwatt.engine.simulation.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LevelTimerTest {
    private final LevelTimer timer = LevelTimer.below(11.8, 30);

    @Test
    void expiresTheDelayAfterARampWentThroughTheLevel() {
        // 12 V falling by 10 mV/s: through 11.8 V at 20 s
        assertThat(timer.expiryS(ramp(100, 12, 11))).isCloseTo(50, within(1e-12));
    }

    @Test
    void countsOnFromStepToStep() {
        timer.advance(ramp(40, 12, 11.6));
        assertThat(timer.expiryS(ramp(60, 11.6, 11))).isCloseTo(10, within(1e-12));
        timer.advance(ramp(9, 11.6, 11.51));
        assertThat(timer.expiryS(ramp(60, 11.51, 11))).isCloseTo(1, within(1e-12));
    }

    @Test
    void aStepTooShortDoesNotExpire() {
        assertThat(timer.expiryS(ramp(49.999, 12, 12 - 0.49999))).isInfinite();
        assertThat(timer.expiryS(ramp(50, 12, 11.5))).isCloseTo(50, within(1e-9));
    }

    @Test
    void anExcursionAboveStartsTheDelayAnew() {
        timer.advance(ramp(29, 11.7, 11.7));
        timer.advance(ramp(0.1, 12, 12));
        timer.advance(ramp(29, 11.7, 11.7));
        assertThat(timer.expiryS(ramp(10, 11.7, 11.7))).isCloseTo(1, within(1e-12));
        timer.advance(ramp(0.5, 11.7, 11.7));
        timer.advance(ramp(0.5, 11.7, 11.9));
        assertThat(timer.expiryS(ramp(29.9, 11.7, 11.7))).isInfinite();
    }

    /** A jump between two steps counts, also when no time passes above. */
    @Test
    void aTouchOfTheLevelFromBelowBreaksTheDelay() {
        timer.advance(ramp(20, 11.7, 11.7));
        timer.advance(ramp(0, 11.8, 11.8));
        assertThat(timer.expiryS(ramp(29, 11.7, 11.7))).isInfinite();
    }

    @Test
    void exactlyAtTheLevelIsNotBelowButIsAbove() {
        assertThat(LevelTimer.below(11.8, 0).expiryS(ramp(10, 11.8, 11.8))).isInfinite();
        assertThat(LevelTimer.above(11.8, 0).expiryS(ramp(10, 11.8, 11.8))).isZero();
    }

    @Test
    void withoutDelayItExpiresAtTheCrossing() {
        assertThat(LevelTimer.below(11.8, 0).expiryS(ramp(10, 12, 11))).isCloseTo(2, within(1e-12));
        assertThat(LevelTimer.below(11.8, 0).expiryS(ramp(10, 11.7, 11))).isZero();
        assertThat(LevelTimer.above(12.4, 0).expiryS(ramp(10, 12, 13))).isCloseTo(4, within(1e-12));
    }

    @Test
    void resetForgets() {
        timer.advance(ramp(25, 11, 11));
        timer.reset();
        assertThat(timer.expiryS(ramp(29, 11, 11))).isInfinite();
        assertThat(timer.expiryS(ramp(31, 11, 11))).isEqualTo(30);
    }

    /** A filtered dip: input 11 V for 3 s then 12.5 V, τ = 2 s, and the reading goes through 11.8 V both ways. */
    @Test
    void filterRippleDecidesByTheReadingNotTheInput() {
        Reading down = ReadingTest.reading(2, 3, 11, 11, 12.5);
        Reading up = ReadingTest.reading(2, 10, 12.5, 12.5, down.at(3));
        double wentBelowS = 2 * Math.log(1.5 / 0.8);
        double cameBackS = 2 * Math.log((12.5 - down.at(3)) / 0.7);
        double belowS = 3 - wentBelowS + cameBackS;
        LevelTimer justLonger = LevelTimer.below(11.8, belowS + 1e-6);
        justLonger.advance(down);
        assertThat(justLonger.expiryS(up)).isInfinite();
        LevelTimer justShorter = LevelTimer.below(11.8, belowS - 1e-6);
        justShorter.advance(down);
        assertThat(justShorter.expiryS(up)).isCloseTo(cameBackS - 1e-6, within(1e-7));
    }

    /** The reading dips below the level and comes back within one step: both pieces are looked at. */
    @Test
    void aDipInsideOneStepIsSeen() {
        Reading dip = ReadingTest.reading(4, 20, 11, 12, 11.5);
        double lowestV = dip.at(dip.turnS());
        double levelV = lowestV + 0.01;
        double inS = dip.crossingS(0, dip.turnS(), levelV);
        double outS = dip.crossingS(dip.turnS(), 20, levelV);
        assertThat(LevelTimer.below(levelV, outS - inS - 1e-6).expiryS(dip)).isCloseTo(outS - 1e-6, within(1e-7));
        assertThat(LevelTimer.below(levelV, outS - inS + 1e-6).expiryS(dip)).isInfinite();
        LevelTimer after = LevelTimer.below(levelV, 100);
        after.advance(dip);
        assertThat(after.expiryS(ramp(99.9, levelV - 0.1, levelV - 0.1))).isInfinite();
    }

    static Reading ramp(double lengthS, double fromV, double toV) {
        return ReadingTest.reading(0, lengthS, fromV, toV, fromV);
    }
}

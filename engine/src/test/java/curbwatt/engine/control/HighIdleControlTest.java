package curbwatt.engine.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HighIdleControlTest {
    private static final HighIdleControl BY_VOLTAGE = new HighIdleControl(
            "by voltage", new IdleTrigger.BelowVoltage(new SensePoint.Node(), 12.8, 13.6), 10, 30, 120, 1200);
    private static final HighIdleControl BY_CURRENT =
            new HighIdleControl("by current", new IdleTrigger.Discharging(5, -10), 10, 30, 120, 1200);

    @Test
    void goesUpWhenTheDelayIsOverAndNotBefore() {
        HighIdleControl.State state = BY_VOLTAGE.next(BY_VOLTAGE.start(), 100, true, 12.5, 0);
        assertThat(state.raised()).isFalse();
        assertThat(BY_VOLTAGE.actsAtS(state)).isEqualTo(110);
        assertThat(BY_VOLTAGE.next(state, 109.9, true, 12.5, 0).raised()).isFalse();
        assertThat(BY_VOLTAGE.next(state, 110, true, 12.5, 0).raised()).isTrue();
    }

    @Test
    void anExcursionStartsTheDelayAnew() {
        HighIdleControl.State state = BY_VOLTAGE.next(BY_VOLTAGE.start(), 0, true, 12.5, 0);
        state = BY_VOLTAGE.next(state, 9, true, 12.9, 0);
        assertThat(BY_VOLTAGE.actsAtS(state)).isInfinite();
        state = BY_VOLTAGE.next(state, 9.5, true, 12.5, 0);
        assertThat(BY_VOLTAGE.actsAtS(state)).isEqualTo(19.5);
    }

    @Test
    void comesBackAfterDwellAndReleaseDelay() {
        HighIdleControl.State state = raisedAt(0);
        state = BY_CURRENT.next(state, 20, true, 14, -15);
        assertThat(BY_CURRENT.actsAtS(state)).as("dwell is longer").isEqualTo(120);
        state = BY_CURRENT.next(state, 100, true, 14, -5);
        state = BY_CURRENT.next(state, 110, true, 14, -15);
        assertThat(BY_CURRENT.actsAtS(state)).as("release delay is longer").isEqualTo(140);
        state = BY_CURRENT.next(state, 140, true, 14, -15);
        assertThat(state.raised()).isFalse();
        assertThat(state.raises()).isEqualTo(1);
        assertThat(state.raisedS(1000)).isEqualTo(140);
    }

    @Test
    void staysUpBetweenTheLevels() {
        HighIdleControl.State state = raisedAt(0);
        for (int timeS = 10; timeS < 1000; timeS += 10) {
            state = BY_CURRENT.next(state, timeS, true, 13, 0);
        }
        assertThat(state.raised()).isTrue();
        assertThat(state.raisedS(1000)).isEqualTo(1000);
    }

    @Test
    void anEngineThatDoesNotIdleIsLeftAlone() {
        HighIdleControl.State state = BY_CURRENT.next(raisedAt(0), 50, false, 12, 40);
        assertThat(state.raised()).isFalse();
        assertThat(state.raisedS(99)).isEqualTo(50);
        assertThat(BY_CURRENT.actsAtS(BY_CURRENT.next(state, 60, false, 12, 40)))
                .isInfinite();
    }

    @Test
    void neverSlowsAFasterIdle() {
        assertThat(BY_CURRENT.engineRpm(raisedAt(0), 650)).isEqualTo(1200);
        assertThat(BY_CURRENT.engineRpm(raisedAt(0), 1500)).isEqualTo(1500);
        assertThat(BY_CURRENT.engineRpm(BY_CURRENT.start(), 650)).isEqualTo(650);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void dwellBoundsHowOftenItGoesUpUnderAnyFigures(long seed) {
        Random random = new Random(seed);
        HighIdleControl.State state = BY_CURRENT.start();
        double timeS = 0;
        double raisedAtS = Double.NEGATIVE_INFINITY;
        while (timeS < 20_000) {
            boolean wasUp = state.raised();
            HighIdleControl.State before = state;
            double batteryA = random.nextDouble() < 0.5 ? 20 : -20;
            state = BY_CURRENT.next(state, timeS, true, 13, batteryA);
            assertThat(BY_CURRENT.next(before, timeS, true, 13, batteryA)).isEqualTo(state);
            if (wasUp && !state.raised()) {
                assertThat(timeS - raisedAtS).isGreaterThanOrEqualTo(120 - 1e-6);
            }
            if (!wasUp && state.raised()) {
                raisedAtS = timeS;
            }
            double stepS = 1 + 40 * random.nextDouble();
            double actsS = BY_CURRENT.actsAtS(state);
            timeS = Math.min(timeS + stepS, Math.max(actsS, timeS + 1e-3));
        }
        assertThat(state.raises()).isBetween(2, (int) (20_000 / 130.0) + 1);
        assertThat(state.raisedS(timeS)).isBetween(120.0 * (state.raises() - 1), timeS);
    }

    @Test
    void refusesLevelsWithoutHysteresis() {
        assertThatThrownBy(() -> new IdleTrigger.BelowVoltage(new SensePoint.Node(), 13, 13))
                .hasMessage("recoveredV is 13.0 V; it must lie above raiseV, 13.0 V");
        assertThatThrownBy(() -> new IdleTrigger.Discharging(5, 5))
                .hasMessage("recoveredA is 5.0 A; it must lie below raiseA, 5.0 A");
    }

    private static HighIdleControl.State raisedAt(double timeS) {
        HighIdleControl.State state = BY_CURRENT.next(BY_CURRENT.start(), timeS - 10, true, 13, 20);
        state = BY_CURRENT.next(state, timeS, true, 13, 20);
        assertThat(state.raised()).isTrue();
        return state;
    }
}

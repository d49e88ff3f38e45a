package curbwatt.engine.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curbwatt.engine.powertrain.EngineMode;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AutomaticStartTest {
    private static final AutomaticStart DEVICE = device(OptionalDouble.of(8), OptionalDouble.of(3600));

    @Test
    void startsBelowTheLevelAfterTheDelay() {
        AutomaticStart.State state = DEVICE.next(DEVICE.start(), 50, EngineMode.OFF, 11.9, 20);
        assertThat(DEVICE.actsAtS(state)).isEqualTo(110);
        assertThat(DEVICE.next(state, 109, EngineMode.OFF, 11.9, 20).running()).isFalse();
        AutomaticStart.State started = DEVICE.next(state, 110, EngineMode.OFF, 11.9, 20);
        assertThat(started.running()).isTrue();
        assertThat(started.starts()).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(names = "OFF", mode = EnumSource.Mode.EXCLUDE)
    void neverStartsWhenParkedNorWhereTheEngineRunsAnyway(EngineMode mode) {
        AutomaticStart.State state = DEVICE.start();
        for (int timeS = 0; timeS < 100_000; timeS += 10) {
            state = DEVICE.next(state, timeS, mode, 10, 30);
        }
        assertThat(state.starts()).isZero();
        assertThat(DEVICE.actsAtS(state)).isInfinite();
    }

    @Test
    void stopsWhenTheChargingCurrentHasTaperedButNotBeforeTheMinimum() {
        AutomaticStart.State state = DEVICE.next(startedAt(0), 100, EngineMode.OFF, 14.2, -5);
        assertThat(DEVICE.actsAtS(state)).as("minimum run").isEqualTo(600);
        state = DEVICE.next(state, 200, EngineMode.OFF, 14.2, -20);
        state = DEVICE.next(state, 900, EngineMode.OFF, 14.2, -7);
        assertThat(DEVICE.actsAtS(state)).as("taper delay").isEqualTo(930);
        state = DEVICE.next(state, 930, EngineMode.OFF, 14.2, -7);
        assertThat(state.running()).isFalse();
        assertThat(state.runS(5000)).isEqualTo(930);
    }

    @Test
    void aBatteryThatStillGivesCurrentIsNotCharged() {
        AutomaticStart.State state = DEVICE.next(startedAt(0), 100, EngineMode.OFF, 12.6, 10);
        assertThat(DEVICE.actsAtS(state)).as("longest run alone").isEqualTo(3600);
        assertThat(DEVICE.next(state, 3600, EngineMode.OFF, 12.6, 10).running()).isFalse();
    }

    @Test
    void stopsWhenThePhaseIsParked() {
        AutomaticStart.State state = DEVICE.next(startedAt(0), 300, EngineMode.PARKED, 14.2, -30);
        assertThat(state.running()).isFalse();
        assertThat(state.runS(900)).isEqualTo(300);
    }

    @Test
    void aFailedStartIsNotCountedAndNotTriedAgainInThePhase() {
        AutomaticStart.State state = DEVICE.failed(startedAt(0), 0);
        state = DEVICE.next(state, 1000, EngineMode.OFF, 11, 20);
        assertThat(state.starts()).isZero();
        assertThat(DEVICE.actsAtS(state)).isInfinite();
        state = DEVICE.next(DEVICE.phaseBegan(state), 2000, EngineMode.OFF, 11, 20);
        assertThat(DEVICE.actsAtS(state)).isEqualTo(2060);
    }

    @Test
    void countsEveryStart() {
        AutomaticStart timed = device(OptionalDouble.empty(), OptionalDouble.of(600));
        AutomaticStart.State state = timed.start();
        for (int timeS = 0; timeS <= 6600; timeS += 60) {
            state = timed.next(state, timeS, EngineMode.OFF, 11.5, state.running() ? -30 : 20);
        }
        // up at 60, down at 660, the level is seen again at 720, up at 780 ...: one start in 720 s
        assertThat(state.starts()).isEqualTo(10);
        assertThat(state.runS(6600)).isEqualTo(9 * 600 + (6600 - (60 + 9 * 720)));
    }

    @Test
    void refusesARunWithoutEnd() {
        assertThatThrownBy(() -> device(OptionalDouble.empty(), OptionalDouble.empty()))
                .hasMessageContaining("would never stop");
        assertThatThrownBy(() -> device(OptionalDouble.empty(), OptionalDouble.of(60)))
                .hasMessage("longestRunS is 60.0 s, allowed is 600.0 to 86400.0 s");
    }

    private static AutomaticStart device(OptionalDouble taperedA, OptionalDouble longestRunS) {
        return new AutomaticStart(
                "automatic start", new SensePoint.Node(), 12.1, 60, 600, taperedA, 30, longestRunS, 750);
    }

    private static AutomaticStart.State startedAt(double timeS) {
        AutomaticStart.State state = DEVICE.next(DEVICE.start(), timeS - 60, EngineMode.OFF, 11, 20);
        state = DEVICE.next(state, timeS, EngineMode.OFF, 11, 20);
        assertThat(state.running()).isTrue();
        return state;
    }
}

package curbwatt.engine.powertrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PowertrainTest {
    private static final EngineSpeed PROFILE = new EngineSpeed(
            List.of(new EngineSpeed.Point(10, 700), new EngineSpeed.Point(20, 1700), new EngineSpeed.Point(40, 900)));

    @Test
    void speedRunsStraightBetweenPointsAndStaysOutside() {
        assertThat(PROFILE.atRpm(0)).isEqualTo(700);
        assertThat(PROFILE.atRpm(15)).isEqualTo(1200);
        assertThat(PROFILE.atRpm(20)).isEqualTo(1700);
        assertThat(PROFILE.atRpm(30)).isEqualTo(1300);
        assertThat(PROFILE.atRpm(1e6)).isEqualTo(900);
        assertThat(PROFILE.lowestRpm()).isEqualTo(700);
    }

    @Test
    void nextCornerLiesAfterTheTimeAsked() {
        assertThat(PROFILE.nextPointS(0)).isEqualTo(10);
        assertThat(PROFILE.nextPointS(10)).isEqualTo(20);
        assertThat(PROFILE.nextPointS(40)).isInfinite();
    }

    @Test
    void crankingCurrentGrowsStraightIntoTheColdAndNotInTheWarm() {
        Starter starter = new Starter(400, 0.1, 100, 2, 2.5);
        assertThat(starter.crankingA(40)).isEqualTo(100);
        assertThat(starter.crankingA(0)).isCloseTo(175, within(1e-12));
        assertThat(starter.crankingA(-30)).isCloseTo(287.5, within(1e-12));
    }

    @Test
    void aFixedLimitHoldsAtEveryTemperature() {
        CrankingLimit limit = new CrankingLimit(OptionalDouble.of(9.0));
        assertThat(limit.minimumV(-30)).isEqualTo(9.0);
        assertThat(limit.minimumV(40)).isEqualTo(9.0);
    }

    @Test
    void onlyDrivingAndIdlingTurnTheEngine() {
        assertThat(List.of(EngineMode.values()).stream().filter(EngineMode::isRunning))
                .containsExactly(EngineMode.DRIVING, EngineMode.IDLING);
    }

    @Test
    void impossibleFiguresAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Starter(0, 0, 100, 40, 1))
                .withMessageContaining("crankingS is 40.0 s, allowed is 0.1 to 30.0 s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CrankingLimit(OptionalDouble.of(5)))
                .withMessageContaining("minimumCrankingV");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new EngineSpeed(List.of()))
                .withMessageContaining("no point");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new EngineSpeed(List.of(new EngineSpeed.Point(10, 700), new EngineSpeed.Point(10, 900))))
                .withMessageContaining("must rise");
    }
}

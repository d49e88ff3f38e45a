package curbwatt.engine.powertrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class FuelRateTest {
    private static final IdleBurn TABLE =
            new IdleBurn(List.of(new IdleBurn.Point(600, 1.2), new IdleBurn.Point(1200, 3.0)));

    @Test
    void tableRunsStraightBetweenPointsFromRestAndBeyond() {
        assertThat(TABLE.atLitresPerH(0)).isZero();
        assertThat(TABLE.atLitresPerH(300)).isCloseTo(0.6, within(1e-12));
        assertThat(TABLE.atLitresPerH(600)).isCloseTo(1.2, within(1e-12));
        assertThat(TABLE.atLitresPerH(900)).isCloseTo(2.1, within(1e-12));
        assertThat(TABLE.atLitresPerH(1400)).isCloseTo(3.6, within(1e-12));
    }

    @Test
    void onePointMeansInProportionToSpeed() {
        IdleBurn burn = IdleBurn.through(650, 1.3);
        assertThat(burn.atLitresPerH(1300)).isCloseTo(2.6, within(1e-12));
    }

    @Test
    void moreLoadOrSpeedNeverBurnsLess() {
        FuelRate rate = new FuelRate(Fuel.DIESEL, TABLE, 0.6);
        for (int rpm = 50; rpm < 2000; rpm += 50) {
            assertThat(rate.litresPerH(rpm, 500)).isGreaterThan(rate.litresPerH(rpm, 0));
            assertThat(rate.litresPerH(rpm, 500)).isGreaterThan(rate.litresPerH(rpm - 50, 500));
        }
    }

    @Test
    void standingEngineBurnsNothing() {
        assertThat(new FuelRate(Fuel.PETROL, TABLE, 0.67).litresPerH(0, 800)).isZero();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new FuelRate(Fuel.PETROL, TABLE, 1.2))
                .hasMessage("alternatorEfficiency is 1.2, allowed is 0.2 to 0.95");
        assertThatThrownBy(() -> new IdleBurn(List.of())).hasMessageContaining("no point");
        assertThatThrownBy(() -> new IdleBurn(List.of(new IdleBurn.Point(700, 2), new IdleBurn.Point(1200, 1.5))))
                .hasMessageContaining("must rise with speed");
    }

    @Test
    void underHoodNearsItsRiseAndFallsAwayWhateverTheStep() {
        UnderHood hood = new UnderHood(40, 600, 1800);
        double once = hood.nextRiseK(0, true, 1200);
        double twice = hood.nextRiseK(hood.nextRiseK(0, true, 500), true, 700);
        assertThat(once).isCloseTo(40 * (1 - Math.exp(-2)), within(1e-12)).isCloseTo(twice, within(1e-12));
        assertThat(hood.nextRiseK(once, false, 1800)).isCloseTo(once / Math.E, within(1e-12));
        assertThat(UnderHood.none().nextRiseK(0, true, 1e6)).isZero();
    }
}

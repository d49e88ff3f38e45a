package curbwatt.engine.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AirTemperatureTest {
    private static final AirTemperature NIGHT = new AirTemperature(List.of(
            new AirTemperature.Point(600, 5), new AirTemperature.Point(3600, -10), new AirTemperature.Point(7200, -4)));

    @Test
    void runsStraightBetweenPointsAndLevelOutside() {
        assertThat(NIGHT.atC(0)).isEqualTo(5);
        assertThat(NIGHT.atC(600)).isEqualTo(5);
        assertThat(NIGHT.atC(2100)).isCloseTo(-2.5, within(1e-12));
        assertThat(NIGHT.atC(3600)).isEqualTo(-10);
        assertThat(NIGHT.atC(5400)).isCloseTo(-7, within(1e-12));
        assertThat(NIGHT.atC(1e6)).isEqualTo(-4);
        assertThat(NIGHT.highestC()).isEqualTo(5);
    }

    @Test
    void tellsWhereTheSlopeChanges() {
        assertThat(NIGHT.nextPointS(0)).isEqualTo(600);
        assertThat(NIGHT.nextPointS(600)).isEqualTo(3600);
        assertThat(NIGHT.nextPointS(7200)).isInfinite();
        assertThat(AirTemperature.constant(20).nextPointS(0)).isInfinite();
    }

    @Test
    void aPhaseStillTakesOneFigure() {
        Phase phase = new Phase("watch", EngineMode.OFF, 60, 12, EngineSpeed.constant(0), Set.of());
        assertThat(phase.air()).isEqualTo(AirTemperature.constant(12));
        assertThat(phase.airC()).isEqualTo(12);
        assertThatThrownBy(() -> new Phase("watch", EngineMode.OFF, 60, 120, EngineSpeed.constant(0), Set.of()))
                .hasMessage("airC is 120.0 °C, allowed is -50.0 to 110.0 °C");
    }

    @Test
    void refusesNoPointAndTimesThatDoNotRise() {
        assertThatThrownBy(() -> new AirTemperature(List.of())).hasMessageContaining("no point");
        assertThatThrownBy(() ->
                        new AirTemperature(List.of(new AirTemperature.Point(5, 1), new AirTemperature.Point(5, 2))))
                .hasMessageContaining("must rise");
    }
}

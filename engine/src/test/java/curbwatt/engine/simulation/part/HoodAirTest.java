package curbwatt.engine.simulation.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.UnderHood;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.Phase;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HoodAirTest {
    private static final UnderHood WARMING = new UnderHood(40, 600, 1800);
    private final HoodAir air = new HoodAir(Optional.of(WARMING));

    @Test
    void risesWhileTheEngineRunsAndFallsWhileItStands() {
        air.begin(off(3600, 20), 0, false);
        assertThat(air.atC(1000)).hasValue(20);
        air.engine(1000, true);
        double hotC = 20 + 40 * (1 - Math.exp(-1));
        assertThat(air.atC(1600).orElseThrow()).isCloseTo(hotC, within(1e-9));
        air.engine(1600, false);
        assertThat(air.atC(3400).orElseThrow()).isCloseTo(20 + (hotC - 20) * Math.exp(-1), within(1e-9));
    }

    @Test
    void carriesItsRiseIntoTheNextPhase() {
        air.begin(idling(600, 20), 0, true);
        air.begin(off(1800, 5), 600, false);
        double riseK = 40 * (1 - Math.exp(-1));
        assertThat(air.atC(600).orElseThrow()).isCloseTo(5 + riseK, within(1e-9));
        assertThat(air.atC(2400).orElseThrow()).isCloseTo(5 + riseK * Math.exp(-1), within(1e-9));
    }

    @Test
    void aPhasesOwnFigureWinsAndIsWhereTheRiseGoesOnFrom() {
        air.begin(idling(600, 20).underHood(AirTemperature.constant(93)), 0, true);
        assertThat(air.atC(300)).hasValue(93);
        air.begin(off(1800, 20), 600, false);
        assertThat(air.atC(2400).orElseThrow()).isCloseTo(20 + 73 * Math.exp(-1), within(1e-9));
    }

    @Test
    void stepsEndAtCornersOfAProfileAndAreShortAgainstTheTimeConstant() {
        AirTemperature profile =
                new AirTemperature(List.of(new AirTemperature.Point(0, 20), new AirTemperature.Point(120, 80)));
        air.begin(idling(600, 20).underHood(profile), 1000, true);
        assertThat(air.atC(1060)).hasValue(50);
        assertThat(air.plainForS(1030, 30, 0.05)).isEqualTo(90);
        air.begin(idling(600, 20), 1600, true);
        assertThat(air.plainForS(1600, 0, 0.05)).isEqualTo(30);
    }

    @Test
    void saysNothingWhereNobodyDoes() {
        HoodAir unknown = new HoodAir(Optional.empty());
        unknown.begin(idling(600, 20), 0, true);
        assertThat(unknown.atC(300)).isEmpty();
        assertThat(unknown.plainForS(300, 300, 0.05)).isInfinite();
    }

    private static Phase off(double durationS, double airC) {
        return new Phase("off", EngineMode.OFF, durationS, airC, EngineSpeed.constant(0), Set.of());
    }

    private static Phase idling(double durationS, double airC) {
        return new Phase("idling", EngineMode.IDLING, durationS, airC, EngineSpeed.constant(700), Set.of());
    }
}

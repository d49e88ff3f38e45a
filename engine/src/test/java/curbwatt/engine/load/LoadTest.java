package curbwatt.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;

class LoadTest {
    @Test
    void exponentsGiveCurrentPowerAndResistance() {
        assertThat(Loads.current("a", 5).currentA(9)).isEqualTo(5);
        assertThat(Loads.power("a", 60).currentA(10)).isCloseTo(6, within(1e-12));
        assertThat(Loads.resistor("a", 2).currentA(10)).isCloseTo(5, within(1e-12));
    }

    @Test
    void meanTakesTheRestBetweenOnTimes() {
        Load radio = Loads.withStandby(Loads.patterned("radio", 10, new LoadPattern.Duty(6, 60, 0, 2)), 0.5);
        assertThat(radio.betweenCurrentA()).isEqualTo(2);
        assertThat(radio.meanCurrentA(12)).isCloseTo(2.8, within(1e-12));
        Load lamp = Loads.withStandby(Loads.patterned("lamp", 10, Loads.flashing("k", 500, 0, 0, 100, 200, 300)), 0.5);
        assertThat(lamp.meanCurrentA(12)).isCloseTo(4.3, within(1e-12));
    }

    @Test
    void withoutStagesItIsAlwaysOnWithStagesInAnyOfThem() {
        assertThat(Loads.current("a", 1).isOnIn(Set.of())).isTrue();
        Load staged = Loads.current("a", 1, "scene", "night");
        assertThat(staged.isOnIn(Set.of("night", "x"))).isTrue();
        assertThat(staged.isOnIn(Set.of("x"))).isFalse();
    }

    @Test
    void impossiblePatternsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Loads.flashing("k", 500, 0))
                .withMessageContaining("onIntervals is empty");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Loads.flashing("k", 500, 0, 0, 300, 200, 400))
                .withMessageContaining("onIntervals start is 200.0 ms, allowed is 300.0 to 500.0 ms");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Loads.flashing("k", 500, 0, 400, 600))
                .withMessageContaining("onIntervals end is 600.0 ms");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new OnInterval(100, 100))
                .withMessageContaining("100.0 to 100.0 ms");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LoadPattern.Duty(61, 60, 0, 0))
                .withMessageContaining("onS is 61.0 s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Loads.flashing("k", 500, 501, 0, 1))
                .withMessageContaining("phaseMs is 501.0 ms");
    }

    @Test
    void impossibleLoadsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Loads.current("a", -1))
                .withMessageContaining("ratedCurrentA is -1.0 A, allowed is 0.0 to 1000.0 A");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DropOut(11, 10.9, 5))
                .withMessageContaining("returnV is 10.9 V, allowed is 11.0 to 16.0 V");
    }
}

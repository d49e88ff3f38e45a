package curbwatt.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RootTest {
    @Test
    void findsARootToItsTolerance() {
        assertThat(Root.between(x -> x * x - 2, 0, 2, 1e-12)).isCloseTo(Math.sqrt(2), within(1e-12));
    }

    @Test
    void findsAJump() {
        assertThat(Root.between(x -> x < 0.3 ? 1 : -50, 0, 1, 1e-9)).isCloseTo(0.3, within(1e-9));
    }

    @Test
    void returnsAnEndThatIsARoot() {
        assertThat(Root.between(x -> x, 0, 1, 1e-9)).isZero();
        assertThat(Root.between(x -> x - 1, 0, 1, 1e-9)).isEqualTo(1);
    }

    @Test
    void refusesABracketWithoutARoot() {
        assertThatThrownBy(() -> Root.between(x -> x + 1, 0, 1, 1e-9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no root between 0.0 and 1.0");
        assertThatThrownBy(() -> Root.between(x -> Double.NaN, 0, 1, 1e-9))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

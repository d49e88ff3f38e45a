package curbwatt.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class InrushTest {
    private static final LoadPattern CONTINUOUS = new LoadPattern.Continuous();

    @Test
    void carriesTheAmpereSecondsOfASurgeThatDiesAway() {
        Inrush surge = new Inrush(8, 0.3);
        double dyingAs = 0;
        double stepS = 1e-4;
        for (double timeS = 0.5 * stepS; timeS < 6; timeS += stepS) {
            dyingAs += 2 * 7 * Math.exp(-timeS / 0.3) * stepS;
        }
        assertThat(2 * (surge.atFactor(0) - 1) * surge.durationS()).isCloseTo(dyingAs, within(1e-4));
    }

    @Test
    void meanCurrentIsThatOfThePatternWalkedThrough() {
        LoadPattern flashing = new LoadPattern.Flashing(
                new FlashClock("clock", 500), List.of(new OnInterval(0, 100), new OnInterval(200, 300)), 0);
        Load lamp = load(flashing, new Inrush(6, 0.03));
        double sumAms = 0;
        for (double atMs = 0.5; atMs < 500; atMs++) {
            double sinceMs = atMs < 100 ? atMs : atMs - 200;
            boolean on = atMs < 100 || (atMs >= 200 && atMs < 300);
            sumAms += on ? 4 * (sinceMs < 30 ? 6 : 1) : lamp.betweenCurrentA();
        }
        assertThat(lamp.meanCurrentA(12.8)).isCloseTo(sumAms / 500, within(1e-9));
    }

    @Test
    void aSurgeLongerThanTheOnTimeFillsIt() {
        LoadPattern duty = new LoadPattern.Duty(0.1, 1, 0, 0);
        assertThat(load(duty, new Inrush(5, 0.5)).meanCurrentA(12.8)).isCloseTo(0.1 * 5 * 4, within(1e-12));
    }

    @Test
    void aLoadHasNoneUnlessItIsGiven() {
        Load plain = new Load("lamp", 4, 12.8, 0, 0, DropOut.never(), CONTINUOUS, Set.of());
        assertThat(plain.inrush()).isEqualTo(Inrush.none());
        assertThat(plain.largestCurrentA(12.8)).isEqualTo(4);
        assertThat(plain.meanCurrentA(12.8)).isEqualTo(4);
        assertThat(Inrush.none().isPossible()).isFalse();
        assertThat(load(CONTINUOUS, Inrush.coldFilament()).largestCurrentA(12.8))
                .isEqualTo(40);
        assertThat(load(CONTINUOUS, Inrush.smallMotor()).meanCurrentA(12.8)).isEqualTo(4);
    }

    @Test
    void refusesFiguresOutOfRange() {
        assertThatThrownBy(() -> new Inrush(0.5, 1)).hasMessage("inrushMultiple is 0.5, allowed is 1.0 to 20.0");
        assertThatThrownBy(() -> new Inrush(5, -1)).hasMessage("inrushS is -1.0 s, allowed is 0.0 to 10.0 s");
    }

    private static Load load(LoadPattern pattern, Inrush inrush) {
        return new Load("lamp", 4, 12.8, 0, 0, DropOut.never(), pattern, Set.of(), inrush, 1);
    }
}

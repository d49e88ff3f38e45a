package curbwatt.engine.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.powertrain.EngineMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A device driven as the simulation is meant to drive it: no step past {@code actsAtS}, and the moment at which
 * {@code wishes} changes found inside the step. The battery is a made-up one whose voltage falls and rises in straight
 * lines, so that every act is known by hand.
 */
class DrivingTest {
    private static final double FALL_V_PER_S = 0.001;
    private static final double RISE_V_PER_S = 0.004;
    private static final AutomaticStart DEVICE = new AutomaticStart(
            "automatic start",
            new SensePoint.Node(),
            12.0,
            60,
            300,
            OptionalDouble.empty(),
            0,
            OptionalDouble.of(300),
            750);

    /** 12.6 V falls to 12.0 V at 600 s, start at 660 s and 11.94 V; up to 13.14 V, stop at 960 s; 12.0 V at 2100 s … */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 5, 37, 250, 5000})
    void actsFallAtTheirInstantsWhateverTheStep(double stepS) {
        assertThat(acts(stepS, 5200))
                .zipSatisfy(
                        List.of(660.0, 960.0, 2160.0, 2460.0, 3660.0, 3960.0, 5160.0),
                        (found, byHand) -> assertThat(found).isCloseTo(byHand, within(1e-5)));
    }

    @Test
    void oneInstantIsShownTwiceWithoutHarm() {
        AutomaticStart.State state = DEVICE.next(DEVICE.start(), 10, EngineMode.OFF, 11, 20);
        assertThat(DEVICE.next(state, 10, EngineMode.OFF, 11, 20)).isEqualTo(state);
    }

    private static List<Double> acts(double stepS, double untilS) {
        List<Double> acts = new ArrayList<>();
        AutomaticStart.State state = DEVICE.start();
        double timeS = 0;
        double voltageV = 12.6;
        while (timeS < untilS) {
            boolean ran = state.running();
            state = DEVICE.next(state, timeS, EngineMode.OFF, voltageV, 20);
            if (state.running() != ran) {
                acts.add(timeS);
            }
            double slope = state.running() ? RISE_V_PER_S : -FALL_V_PER_S;
            double lengthS = Math.min(Math.min(stepS, untilS - timeS), DEVICE.actsAtS(state) - timeS);
            double startV = voltageV;
            lengthS = turnS(state, startV, slope, lengthS);
            timeS += lengthS;
            voltageV = startV + slope * lengthS;
        }
        return acts;
    }

    /** Length of the step up to just past the moment at which the device's wish changes. */
    private static double turnS(AutomaticStart.State state, double startV, double slope, double lengthS) {
        boolean before = DEVICE.wishes(state, startV, 20);
        if (DEVICE.wishes(state, startV + slope * lengthS, 20) == before) {
            return lengthS;
        }
        double below = 0;
        double above = lengthS;
        while (above - below > 1e-7) {
            double middle = 0.5 * (below + above);
            if (DEVICE.wishes(state, startV + slope * middle, 20) == before) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return above;
    }
}

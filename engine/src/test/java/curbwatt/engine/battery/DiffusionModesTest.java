package curbwatt.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class DiffusionModesTest {
    private final DiffusionModes modes = new DiffusionModes(List.of(0.03, 0.5, 8.0), List.of(1.0, 0.5, 0.4), 0.2);

    @Test
    void aStepIsAsGoodAsAMillionShortOnes() {
        double[] once = {1, 2, 3};
        double[] often = {1, 2, 3};
        modes.advance(once, 12.5, 1000);
        for (int i = 0; i < 1_000_000; i++) {
            modes.advance(often, 12.5, 0.001);
        }
        assertThat(often).containsExactly(once, within(1e-10));
    }

    @Test
    void aPreparedStepIsTheSameToTheLastBit() {
        double[] plain = {1, 2, 3};
        double[] prepared = {1, 2, 3};
        DiffusionStep step = modes.step(0.075);
        for (double currentA : new double[] {30, 0, -12, 4}) {
            modes.advance(plain, currentA, 0.075);
            step.advance(prepared, currentA);
        }
        assertThat(prepared).containsExactly(plain);
    }

    /** Ten flashes of a second, drawn as their mean: each is lit before it is dark, so that the drive always runs ahead. */
    @Test
    void swingsAboutTheMeanLeaveWhatTheirMeanLeadSays() {
        double[] flashed = {0.1, 0.2, 0.3};
        double[] averaged = flashed.clone();
        double meanA = 10;
        double aheadAs = 0;
        double sum = 0;
        for (int half = 0; half < 20; half++) {
            double currentA = half % 2 == 0 ? 20 : 0;
            modes.advance(flashed, currentA, 0.5);
            sum += 0.5 * (aheadAs + 0.25 * (currentA - meanA));
            aheadAs += 0.5 * (currentA - meanA);
        }
        modes.advance(averaged, meanA, 10);
        double[] uncorrected = averaged.clone();

        modes.lag(averaged, new double[] {sum / 10 / 3600}, new double[] {10, 0}, 1);

        for (int m = 0; m < flashed.length; m++) {
            double off = Math.abs(flashed[m] - uncorrected[m]);
            assertThat(Math.abs(flashed[m] - averaged[m])).isLessThan(0.05 * off);
        }
    }

    @Test
    void chargingBindsLessByItsFactor() {
        double[] drawn = new double[3];
        double[] charged = new double[3];
        modes.advance(drawn, 10, 500);
        modes.advance(charged, -10, 500);
        for (int m = 0; m < 3; m++) {
            assertThat(charged[m]).isCloseTo(-0.2 * drawn[m], within(1e-15));
        }
    }

    @Test
    void closedFormFromRestIsTheSum() {
        double[] bound = new double[3];
        modes.advance(bound, 7, 1800);
        assertThat(modes.boundFromRestAh(7, 0.5)).isCloseTo(bound[0] + bound[1] + bound[2], within(1e-14));
    }

    @Test
    void refusesImpossibleValues() {
        assertThatThrownBy(() -> new DiffusionModes(List.of(1.0), List.of(), 1)).hasMessageContaining("one per time");
        assertThatThrownBy(() -> new DiffusionModes(List.of(0.0), List.of(1.0), 1))
                .hasMessageContaining("timeConstantsH[0] is 0.0 h");
        assertThatThrownBy(() -> new DiffusionModes(List.of(1.0), List.of(-1.0), 1))
                .hasMessageContaining("weights[0] is -1.0");
        assertThatThrownBy(() -> new DiffusionModes(List.of(1.0), List.of(1.0), 1.5))
                .hasMessageContaining("chargingFactor is 1.5, allowed is 0.0 to 1.0");
    }
}

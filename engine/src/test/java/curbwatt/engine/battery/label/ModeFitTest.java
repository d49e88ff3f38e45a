package curbwatt.engine.battery.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.DiffusionModes;
import curbwatt.engine.numeric.Root;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModeFitTest {
    /** Largest relative distance of the time until exhaustion from Peukert's, between two lives. */
    private static double worst(double exponent, double shortestH, double longestH) {
        PeukertLaw law = new PeukertLaw(1, 20, exponent);
        ModeFit fit = ModeFit.of(law);
        DiffusionModes modes = fit.modes(1);
        double worst = 0;
        for (int i = 0; i <= 200; i++) {
            double currentA = law.currentA(shortestH * Math.pow(longestH / shortestH, i / 200.0));
            double lifeH = Root.between(
                    h -> fit.totalChargeAh() - currentA * h - modes.boundFromRestAh(currentA, h),
                    0,
                    fit.totalChargeAh() / currentA,
                    1e-12);
            worst = Math.max(worst, Math.abs(lifeH / law.lifeH(currentA) - 1));
        }
        return worst;
    }

    @ParameterizedTest
    @CsvSource({"1.05, 0.001", "1.10, 0.001", "1.17, 0.002", "1.20, 0.002", "1.30, 0.004", "1.45, 0.008"})
    void followsPeukertFromThreeMinutesToTwentyHours(double exponent, double worstFraction) {
        assertThat(worst(exponent, 0.05, 20)).isLessThan(worstFraction);
    }

    @Test
    void keepsAFiniteChargeAtSmallCurrents() {
        ModeFit fit = ModeFit.of(new PeukertLaw(70, 20, 1.17));
        assertThat(fit.totalChargeAh()).isBetween(70.0, 90.0);
    }

    @Test
    void scalesWithTheCharge() {
        ModeFit small = ModeFit.of(new PeukertLaw(1, 20, 1.17));
        ModeFit large = ModeFit.of(new PeukertLaw(100, 20, 1.17));
        assertThat(large.totalChargeAh()).isCloseTo(100 * small.totalChargeAh(), within(1e-9));
        for (int m = 0; m < small.weights().size(); m++) {
            assertThat(large.weights().get(m)).isCloseTo(small.weights().get(m), within(1e-9));
        }
    }

    @Test
    void noRateDependenceNeedsNoModes() {
        ModeFit fit = ModeFit.of(new PeukertLaw(1, 20, 1));
        assertThat(fit.totalChargeAh()).isCloseTo(1, within(1e-9));
        assertThat(fit.weights()).allSatisfy(w -> assertThat(w).isLessThan(1e-9));
    }

    /** Half the time at twice the current, fast: what counts is the mean, not Peukert's law on the peaks. */
    @ParameterizedTest
    @CsvSource({"20, 10", "40, 20"})
    void fastFlashingDeliversWhatItsMeanDoes(double onA, double meanA) {
        PeukertLaw law = new PeukertLaw(70, 20, 1.17);
        ModeFit fit = ModeFit.of(law);
        DiffusionModes modes = fit.modes(1);
        double[] bound = new double[modes.size()];
        double removedAh = 0;
        double flashS = 0.3;
        while (removedAh + Arrays.stream(bound).sum() < fit.totalChargeAh()) {
            modes.advance(bound, onA, flashS);
            removedAh += onA * flashS / 3600;
            modes.advance(bound, 0, flashS);
        }
        assertThat(removedAh / law.deliveredAh(meanA)).isCloseTo(1, within(0.003));
        assertThat(removedAh).isGreaterThan(1.09 * law.deliveredAh(onA));
    }
}

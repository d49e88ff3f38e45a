package curbwatt.engine.battery.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.BatteryState;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.Terminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LfpFitTest {
    private static Battery pack() {
        return Battery.asNew(LfpFit.of(LfpLabel.ofTwentyHours(100, 0.015)));
    }

    @ParameterizedTest
    @CsvSource({"100, 20, 0.015", "12, 5, 0.05", "300, 3, 0.004", "50, 1, 0.01"})
    void theCapacityTestGivesTheLabel(double ratedAh, double ratedH, double resistanceOhm) {
        BatteryParameters parameters = LfpFit.of(new LfpLabel(ratedAh, ratedH, resistanceOhm));
        double deliveredAh =
                new DischargeCurve(Battery.asNew(parameters), 25, ratedAh / ratedH).deliveredAh(LfpFit.END_V);
        assertThat(deliveredAh).isCloseTo(ratedAh, within(1e-9 * ratedAh));
        assertThat(parameters.totalChargeAh()).isEqualTo(parameters.capacityAh());
    }

    @Test
    void aShortTestMakesALargerBattery() {
        double fromTwenty = LfpFit.of(new LfpLabel(100, 20, 0.002)).capacityAh();
        double fromFive = LfpFit.of(new LfpLabel(100, 5, 0.002)).capacityAh();
        assertThat(fromFive / fromTwenty).isCloseTo(Math.pow(4, 1 - 1 / 1.05), within(0.01));
    }

    @Test
    void doesNotGasAndTakesChargeToTheEndAndNoFurther() {
        Terminal terminal = pack().at(25);
        assertThat(terminal.gassingA(16)).isZero();
        assertThat(terminal.gassingSlopeAPerV(16)).isZero();
        // 50 A into a pack that lacks half: resistance and little else
        assertThat(terminal.dropV(0.5, -50)).isCloseTo(-50 * 0.015, within(0.05));
        assertThat(terminal.dropV(1, -0.001)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void restVoltageIsFlatInTheMiddleAndHeldAtTheEnds() {
        Terminal terminal = pack().at(25);
        assertThat(terminal.restVoltageV(0.8) - terminal.restVoltageV(0.4)).isLessThan(0.2);
        assertThat(terminal.restVoltageV(1.02)).isEqualTo(13.6);
        assertThat(terminal.restVoltageV(-0.02)).isEqualTo(10.0);
        assertThat(pack().at(-10).restVoltageV(0.5)).isEqualTo(terminal.restVoltageV(0.5));
    }

    @Test
    void coldPutsChargeOutOfReachButWarmthAddsNone() {
        Battery pack = pack();
        assertThat(pack.at(45).totalChargeAh()).isEqualTo(pack.at(25).totalChargeAh());
        double before = pack.at(25).totalChargeAh();
        for (double temperatureC = 20; temperatureC >= -60; temperatureC -= 5) {
            double now = pack.at(temperatureC).totalChargeAh();
            assertThat(now).isPositive().isLessThanOrEqualTo(before);
            before = now;
        }
    }

    @Test
    void stateOfChargeZeroIsTheEndOfTheSlowestDischarge() {
        Battery pack = pack();
        BatteryState empty = BatteryState.atStateOfCharge(0, pack);
        assertThat(pack.at(25).headFraction(empty.removedAh(), 0)).isZero();
        assertThat(pack.at(25).idleV(empty.removedAh(), 0)).isCloseTo(10.0, within(0.3));
    }

    @Test
    void refusesWhatNoPackHas() {
        assertThatThrownBy(() -> LfpFit.of(new LfpLabel(100, 1, 0.05)))
                .isInstanceOf(InfeasibleLabelException.class)
                .hasMessageContaining("resistanceOhm is 0.0500 Ohm; it takes 5.0 V at the 100.0 A");
        assertThatThrownBy(() -> new LfpLabel(0, 20, 0.01)).hasMessageContaining("ratedAh is 0.0 Ah");
        assertThatThrownBy(() -> BatteryLabel.of(Chemistry.LFP, 100, 180, 800))
                .hasMessageContaining("an LFP pack has an LfpLabel");
    }
}

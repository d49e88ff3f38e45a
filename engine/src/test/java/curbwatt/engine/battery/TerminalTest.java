package curbwatt.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TerminalTest {
    private static Battery battery(Chemistry chemistry) {
        return Battery.asNew(new BatteryParameters(
                chemistry,
                70,
                70.2,
                84.3,
                1.17,
                new DiffusionModes(List.of(0.03, 0.5, 8.0), List.of(1.0, 0.5, 0.4), 0.2),
                0.002));
    }

    @ParameterizedTest
    @CsvSource({"25, 20, 3, 15", "-18, 5, 1, 400", "40, 55, 8, 2", "0, 60, 0.5, 0.001", "25, 30, -2, -25", "5, 5, 0, -3"
    })
    void slopeIsThatOfTheVoltage(double temperatureC, double removedAh, double boundAh, double currentA) {
        Terminal terminal = battery(Chemistry.AGM).at(temperatureC);
        double step = 1e-4 * Math.abs(currentA);
        double secant = (terminal.voltageV(removedAh, boundAh, currentA + step)
                        - terminal.voltageV(removedAh, boundAh, currentA - step))
                / (2 * step);
        assertThat(terminal.slopeVPerA(terminal.surfaceState(removedAh, boundAh), currentA))
                .isCloseTo(secant, within(1e-6 * Math.abs(secant)));
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void moreCurrentNeverGivesMoreVoltage(Chemistry chemistry) {
        for (double temperatureC : new double[] {-40, -18, 0, 25, 50}) {
            Terminal terminal = battery(chemistry).at(temperatureC);
            for (double removedAh = 0; removedAh < 90; removedAh += 4.9) {
                for (double boundAh = -3; boundAh < 25; boundAh += 3) {
                    double before = Double.POSITIVE_INFINITY;
                    for (double currentA = -200; currentA <= 800; currentA += 10) {
                        double now = terminal.voltageV(removedAh, boundAh, currentA);
                        assertThat(now).isLessThanOrEqualTo(before);
                        assertThat(terminal.slopeVPerA(terminal.surfaceState(removedAh, boundAh), currentA))
                                .isLessThanOrEqualTo(0);
                        before = now;
                    }
                }
            }
        }
    }

    @Test
    void anExhaustedHeadGivesNothingButTakesCharge() {
        Terminal terminal = battery(Chemistry.FLOODED).at(25);
        assertThat(terminal.headFraction(60, 24.4)).isNegative();
        assertThat(terminal.voltageV(60, 24.4, 0.1)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(terminal.voltageV(60, 24.4, -0.1)).isFinite();
        assertThat(terminal.voltageV(60, 24.2999, 0.1)).isFinite();
    }

    @Test
    void aBatteryChilledPastItsColdChargeStillRestsAndTakesCharge() {
        Terminal terminal = battery(Chemistry.FLOODED).at(-30);
        assertThat(terminal.totalChargeAh()).isLessThan(65);
        assertThat(terminal.voltageV(65, 0, 0)).isCloseTo(terminal.restVoltageV(1 - 65 / 70.2), within(1e-12));
        assertThat(terminal.voltageV(65, 0, 0.1)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(terminal.voltageV(65, 0, -1)).isFinite();
    }

    @Test
    void aFullSurfaceTakesNoCharge() {
        Terminal terminal = battery(Chemistry.FLOODED).at(25);
        assertThat(terminal.voltageV(0, 0, -0.001)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(terminal.voltageV(0.2, -0.3, -0.001)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(terminal.voltageV(0.2, 0, -0.001)).isFinite();
    }

    @Test
    void acceptanceFollowsTheMissingChargeAndHalvesInFifteenKelvin() {
        Terminal warm = battery(Chemistry.FLOODED).at(25);
        Terminal cool = battery(Chemistry.FLOODED).at(10);
        double missingAh = 5;
        double currentA = missingAh;
        double restV = warm.voltageV(missingAh, 0, 0);
        double ohmicV = currentA * 0.002 * (1 + 0.5 * missingAh / 70.2);
        double activationV = 0.07 * Math.log(currentA / 0.9828 + Math.sqrt(1 + Math.pow(currentA / 0.9828, 2)));
        assertThat(warm.voltageV(missingAh, 0, -currentA) - restV - ohmicV - activationV)
                .isCloseTo(1.0, within(1e-9));
        assertThat(cool.slopeVPerA(cool.surfaceState(missingAh, 0), -currentA))
                .isLessThan(warm.slopeVPerA(warm.surfaceState(missingAh, 0), -currentA) - 0.19);
    }

    /** Gassing at its reference point is 0.02 A for 100 Ah by construction; the rest follows from the exponents. */
    @Test
    void gassingGrowsWithVoltageAndWarmth() {
        Terminal terminal = battery(Chemistry.FLOODED).at(20);
        assertThat(terminal.gassingA(6 * 2.23)).isCloseTo(0.7 * 0.02, within(1e-12));
        assertThat(terminal.gassingA(14.4) / terminal.gassingA(13.8)).isCloseTo(Math.exp(1.1), within(1e-9));
        assertThat(battery(Chemistry.FLOODED).at(30).gassingA(14) / terminal.gassingA(14))
                .isCloseTo(Math.exp(0.6), within(1e-9));
        double secant = (terminal.gassingA(14.001) - terminal.gassingA(13.999)) / 0.002;
        assertThat(terminal.gassingSlopeAPerV(14)).isCloseTo(secant, within(1e-5 * secant));
    }

    @Test
    void agePullsCapacityDownAndResistanceUpAndLeavesGassing() {
        BatteryParameters parameters = battery(Chemistry.FLOODED).parameters();
        Battery aged = new Battery(parameters, new BatteryCondition(0.6, 2, 0.05));
        assertThat(aged.capacityAh()).isCloseTo(0.6 * 70.2, within(1e-12));
        assertThat(aged.totalChargeAh()).isCloseTo(0.6 * 84.3, within(1e-12));
        assertThat(aged.at(25).gassingA(14))
                .isEqualTo(battery(Chemistry.FLOODED).at(25).gassingA(14));
        // at a large current the slope is the ohmic resistance and little else
        assertThat(aged.at(25).slopeVPerA(aged.at(25).surfaceState(0, 0), 1000)).isCloseTo(-0.004, within(0.0001));
        assertThat(BatteryState.atStateOfCharge(0.5, aged).removedAh()).isCloseTo(0.3 * 70.2, within(1e-12));
    }

    @Test
    void selfDischargeIsThreePercentAMonthAndDoublesInTenKelvin() {
        Battery fresh = battery(Chemistry.FLOODED);
        assertThat(fresh.selfDischargeA(25) * 730.5).isCloseTo(0.03 * 70.2, within(1e-9));
        assertThat(fresh.selfDischargeA(35)).isCloseTo(2 * fresh.selfDischargeA(25), within(1e-12));
    }

    /** US CID A-A-55439A § 3.19: four weeks at 24 °C must leave 90 % of the reserve (classes 5 to 7). */
    @Test
    void keepsItsChargeForFourWeeks() {
        Battery fresh = battery(Chemistry.FLOODED);
        assertThat(fresh.selfDischargeA(24) * 28 * 24).isLessThan(0.1 * 70.2);
    }

    @Test
    void refusesImpossibleValues() {
        assertThatThrownBy(() -> battery(Chemistry.AGM).at(120))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("temperatureC is 120.0 °C, allowed is -60.0 to 80.0 °C");
        assertThatThrownBy(() -> new BatteryCondition(0, 1, 0.03))
                .hasMessageContaining("capacityHealthFraction is 0.0");
        assertThatThrownBy(() -> BatteryState.atStateOfCharge(1.2, battery(Chemistry.AGM)))
                .hasMessageContaining("stateOfChargeFraction is 1.2");
        assertThatThrownBy(() -> new BatteryState(Double.NaN, List.of())).hasMessageContaining("removedAh is NaN Ah");
    }

    /** A terminal that was taken to a temperature is the one that a battery of that temperature has. */
    @ParameterizedTest
    @ValueSource(doubles = {-30, 0, 25, 60})
    void warmedIsAsMadeThere(double temperatureC) {
        Battery battery = battery(Chemistry.FLOODED);
        Terminal made = battery.at(temperatureC);
        Terminal warmed = battery.at(25);
        warmed.warmTo(temperatureC);
        Terminal follows = battery.at(10);
        follows.warmTo(warmed);
        for (Terminal each : List.of(warmed, follows)) {
            assertThat(each.temperatureC()).isEqualTo(temperatureC);
            assertThat(each.totalChargeAh()).isEqualTo(made.totalChargeAh());
            assertThat(each.voltageV(20, 3, 30)).isEqualTo(made.voltageV(20, 3, 30));
            assertThat(each.voltageV(20, 3, -10)).isEqualTo(made.voltageV(20, 3, -10));
            assertThat(each.gassingA(14.2)).isEqualTo(made.gassingA(14.2));
        }
    }
}

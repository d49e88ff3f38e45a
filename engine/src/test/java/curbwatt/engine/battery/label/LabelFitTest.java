package curbwatt.engine.battery.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelFitTest {
    @Test
    void findsTheParametersOfTwoUsualLabels() {
        BatteryParameters flooded =
                LabelFit.of(BatteryLabel.of(Chemistry.FLOODED, 70, 120, 650)).parameters();
        assertThat(flooded.capacityAh()).isCloseTo(70.21, within(0.01));
        assertThat(flooded.peukertExponent()).isCloseTo(1.173, within(0.001));
        BatteryParameters agm =
                LabelFit.of(BatteryLabel.of(Chemistry.AGM, 92, 160, 850)).parameters();
        assertThat(agm.capacityAh()).isCloseTo(93.29, within(0.01));
        assertThat(agm.peukertExponent()).isCloseTo(1.178, within(0.0015));
    }

    @Test
    void theSameLabelGivesTheSameBattery() {
        BatteryLabel label = BatteryLabel.of(Chemistry.AGM, 92, 160, 850);
        assertThat(LabelFit.of(label)).isEqualTo(LabelFit.of(label));
    }

    @Test
    void estimatesWhatTheLabelDoesNotSayAndFlagsIt() {
        FittedLabel fitted =
                LabelFit.of(new BatteryLabel(Chemistry.FLOODED, 70, OptionalDouble.empty(), OptionalDouble.empty()));
        assertThat(fitted.reserveEstimated()).isTrue();
        assertThat(fitted.coldCrankingEstimated()).isTrue();
        assertThat(fitted.figures().reserveMin()).isCloseTo(119.6, within(0.1));
        assertThat(fitted.figures().coldCrankingA()).isCloseTo(643.2, within(0.1));
        assertThat(fitted.tests().reserveMin()).isCloseTo(fitted.figures().reserveMin(), within(1e-6));
        FittedLabel whole = LabelFit.of(BatteryLabel.of(Chemistry.FLOODED, 70, 120, 650));
        assertThat(whole.reserveEstimated()).isFalse();
        assertThat(whole.coldCrankingEstimated()).isFalse();
    }

    @Test
    void refusesAReserveAboveTheCharge() {
        assertThatThrownBy(() -> LabelFit.of(BatteryLabel.of(Chemistry.FLOODED, 70, 240, 650)))
                .isInstanceOf(InfeasibleLabelException.class)
                .hasMessage("reserveMin is 240.0 min, which draws 100.0 Ah at 25 A; a battery of c20Ah 70.0 Ah and"
                        + " coldCrankingA 650 A has a reserve between 67.5 and 168.3 min");
    }

    @Test
    void refusesAReserveFarBelowTheCharge() {
        assertThatThrownBy(() -> LabelFit.of(BatteryLabel.of(Chemistry.FLOODED, 70, 40, 650)))
                .isInstanceOf(InfeasibleLabelException.class)
                .hasMessageContaining("reserveMin is 40.0 min")
                .hasMessageContaining("between 67.5 and 168.3 min");
    }

    @Test
    void refusesCrankingThatNoResistanceAllows() {
        assertThatThrownBy(() -> LabelFit.of(BatteryLabel.of(Chemistry.FLOODED, 70, 100, 2100)))
                .isInstanceOf(InfeasibleLabelException.class)
                .hasMessageContaining("coldCrankingA is 2100 A")
                .hasMessageContaining("even without ohmic resistance");
    }

    /** Reserve is 25 A for RC min: never more than the 20 h charge allows, whatever the label. */
    @Test
    void everyLabelIsMetOrRefusedWithAReason() {
        Random random = new Random(3);
        int met = 0;
        for (int i = 0; i < 300; i++) {
            double c20Ah = 30 + 220 * random.nextDouble();
            double reserveMin = c20Ah * (0.8 + 2 * random.nextDouble());
            double coldCrankingA = c20Ah * (1 + 29 * random.nextDouble());
            Chemistry chemistry = random.nextBoolean() ? Chemistry.FLOODED : Chemistry.AGM;
            try {
                FittedLabel fitted = LabelFit.of(BatteryLabel.of(chemistry, c20Ah, reserveMin, coldCrankingA));
                LabelFigures tests = LabelTestRun.all(Battery.asNew(fitted.parameters()));
                assertThat(tests.c20Ah()).isCloseTo(c20Ah, within(1e-6 * c20Ah));
                assertThat(tests.reserveMin()).isCloseTo(reserveMin, within(1e-6 * reserveMin));
                assertThat(tests.coldCrankingA()).isCloseTo(coldCrankingA, within(1e-6 * coldCrankingA));
                assertThat(reserveMin).isLessThan(2.4 * 1.02 * c20Ah);
                met++;
            } catch (InfeasibleLabelException e) {
                assertThat(e).hasMessageContaining("c20Ah");
            }
        }
        assertThat(met).isGreaterThan(80);
    }

    @Test
    void refusesFiguresThatNoLabelHas() {
        assertThatThrownBy(() -> BatteryLabel.of(Chemistry.AGM, 70, 120, 65))
                .hasMessageContaining("coldCrankingA is 65.0 A, allowed is 70.0 to 2100.0 A");
        assertThatThrownBy(() -> BatteryLabel.of(Chemistry.AGM, 0, 120, 650)).hasMessageContaining("c20Ah is 0.0 Ah");
    }

    @Test
    void dischargeCurveEndsAtItsVoltage() {
        Battery battery = Battery.asNew(
                LabelFit.of(BatteryLabel.of(Chemistry.FLOODED, 70, 120, 650)).parameters());
        DischargeCurve curve = new DischargeCurve(battery, 25, 3.5);
        assertThat(curve.timeToH(10.5)).isCloseTo(20, within(1e-9));
        var points = curve.points(11, 10.5);
        assertThat(points).hasSize(11);
        assertThat(points.get(10).voltageV()).isCloseTo(10.5, within(1e-6));
        assertThat(points.get(10).deliveredAh()).isCloseTo(70, within(1e-8));
        assertThat(points).isSortedAccordingTo((a, b) -> Double.compare(b.voltageV(), a.voltageV()));
        assertThat(curve.timeToH(13)).isZero();
    }
}

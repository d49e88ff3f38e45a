package curbwatt.engine.alternator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AlternatorTest {
    private static final ReactanceOutputCurve LAW = ReactanceOutputCurve.through(AlternatorLabel.of(50, 120));
    private static final Alternator MACHINE =
            new Alternator(LAW, HotFactor.published(), VoltageRegulator.usual(14.2), 2.5, 0);

    @Test
    void theShaftTurnsByThePulleyRatio() {
        assertThat(MACHINE.maximumA(800))
                .isEqualTo(LAW.maximumA(2000) * HotFactor.published().at(2000));
    }

    @Test
    void balanceSpeedDeliversTheDemandAndATenthOfATurnLessDoesNot() {
        double rpm = MACHINE.balanceRpm(60).orElseThrow();
        assertThat(MACHINE.maximumA(rpm)).isGreaterThanOrEqualTo(60);
        assertThat(MACHINE.maximumA(rpm - 0.1)).isLessThan(60);
    }

    @Test
    void balanceSpeedIsEmptyWhereNoSpeedIsEnough() {
        assertThat(MACHINE.balanceRpm(110)).isEmpty();
        assertThat(MACHINE.balanceRpm(90)).isPresent();
    }

    @Test
    void nothingBelowCutInAndNearlyTheLimitAtSpeed() {
        assertThat(LAW.maximumA(LAW.cutInRpm())).isZero();
        assertThat(LAW.maximumA(Math.nextUp(LAW.cutInRpm()))).isPositive();
        assertThat(LAW.maximumA(1e7)).isCloseTo(LAW.limitA(), within(1e-5));
    }

    @Test
    void trustBeginsATenthAboveCutIn() {
        assertThat(MACHINE.isTrustedAt(1.1 * LAW.cutInRpm() / 2.5 + 0.01)).isTrue();
        assertThat(MACHINE.isTrustedAt(1.1 * LAW.cutInRpm() / 2.5 - 0.01)).isFalse();
    }

    @Test
    void theHotPairHoldsAtItsTemperatureAndTheLabelAtThatOfTheBench() {
        HotFactor pair = new HotFactor(0.6, 0.8);
        assertThat(pair.under(HotFactor.HOT_C)).isEqualTo(pair);
        assertThat(pair.under(HotFactor.COLD_C)).isEqualTo(new HotFactor(1, 1));
        assertThat(pair.under(-30)).isEqualTo(new HotFactor(1, 1));
        HotFactor half = pair.under(59);
        assertThat(half.lowFraction()).isCloseTo(0.8, within(1e-12));
        assertThat(half.highFraction()).isCloseTo(0.9, within(1e-12));
        assertThat(pair.under(110).lowFraction()).isCloseTo(0.5, within(1e-12));
        assertThat(pair.under(400).lowFraction()).isZero();
        assertThat(MACHINE.under(OptionalDouble.empty())).isSameAs(MACHINE);
    }

    /** One published machine gave more when warm; nothing is made of that beyond its own temperature. */
    @Test
    void aMachineThatGainsByHeatGainsNoMoreBeyondItsTemperature() {
        HotFactor gains = new HotFactor(1, 1.06);
        assertThat(gains.under(HotFactor.COLD_C).highFraction()).isEqualTo(1);
        assertThat(gains.under(110)).isEqualTo(gains);
    }

    @Test
    void hotFactorIsFlatOutsideItsPairAndStraightBetween() {
        HotFactor pair = new HotFactor(0.6, 0.8);
        assertThat(pair.at(0)).isEqualTo(0.6);
        assertThat(pair.at(1900)).isCloseTo(0.7, within(1e-15));
        assertThat(pair.at(9000)).isCloseTo(0.8, within(1e-15));
    }

    @Test
    void setPointIsClampedInHeatAndCold() {
        VoltageRegulator regulator = new VoltageRegulator(14.2, -0.01, 13.8, 14.6);
        assertThat(regulator.setPointV(25)).isEqualTo(14.2);
        assertThat(regulator.setPointV(65)).isCloseTo(13.8, within(1e-12));
        assertThat(regulator.setPointV(110)).isEqualTo(13.8);
        assertThat(regulator.setPointV(-40)).isEqualTo(14.6);
    }

    @Test
    void impossibleMachinesAreRefusedWithFieldValueAndRange() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AlternatorLabel.of(120, 120))
                .withMessageContaining("idleA is 120.0 A")
                .withMessageContaining("ratedA");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Alternator(LAW, HotFactor.published(), VoltageRegulator.usual(14.2), 0.5, 0))
                .withMessageContaining("pulleyRatio is 0.5, allowed is 1.0 to 5.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new VoltageRegulator(14.2, 0.01, 13, 15))
                .withMessageContaining("slopeVPerK");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MeasuredOutputCurve(
                        List.of(new MeasuredOutputCurve.Point(2000, 80), new MeasuredOutputCurve.Point(3000, 70))))
                .withMessageContaining("70.0 A follows 2000.0 /min");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MeasuredOutputCurve(List.of(new MeasuredOutputCurve.Point(2000, 80))))
                .withMessageContaining("1 points");
    }
}

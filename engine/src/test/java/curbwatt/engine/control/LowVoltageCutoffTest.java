package curbwatt.engine.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class LowVoltageCutoffTest {
    @Test
    void theWarningLiesAtOrAboveTheTripLevel() {
        LowVoltageCutoff plain = Cutoffs.byHand("c", 11.8, 30, "a");
        assertThat(Cutoffs.warning(plain, 11.8).warningV()).hasValue(11.8);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cutoffs.warning(plain, 11.7))
                .withMessageContaining("warningV is 11.7 V, allowed is 11.8 to 16.0 V");
    }

    @Test
    void theRecloseLevelLiesAboveTheTripLevel() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cutoffs.of("c", 0, 11.8, 30, new RecloseRule.AboveVoltage(11.8, 0), "a"))
                .withMessageContaining("recloseV is 11.8 V; it must lie above tripV, 11.8 V");
    }

    @Test
    void somethingIsDisconnected() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cutoffs.byHand("c", 11.8, 30))
                .withMessageContaining("circuits is empty");
    }

    @Test
    void figuresOutOfRangeAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cutoffs.byHand("c", 5, 30, "a"))
                .withMessageContaining("tripV is 5.0 V, allowed is 6.0 to 14.0 V");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cutoffs.limited(Cutoffs.byHand("c", 11, 30, "a"), 0))
                .withMessageContaining("runTimeLimitS is 0.0 s");
    }
}

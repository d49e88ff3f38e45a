package curbwatt.engine.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackProtectionTest {
    private static final PackProtection USUAL = PackProtection.usual(100, 100);
    private static final PackReading CALM = new PackReading(13.2, 10, 20);

    private static ProtectionState after(ProtectionState state, double voltageV, double currentA, double durationS) {
        return USUAL.next(state, new PackReading(voltageV, currentA, 20), durationS);
    }

    @Test
    void aCalmPackLetsEverythingThrough() {
        ProtectionState state = USUAL.next(ProtectionState.closed(), CALM, 1e6);
        assertThat(state).isEqualTo(ProtectionState.closed());
        assertThat(USUAL.changesInS(state, CALM)).isInfinite();
    }

    @Test
    void underVoltageStopsDischargeAfterItsDelayAndChargingBringsItBack() {
        ProtectionState waiting = after(ProtectionState.closed(), 9.9, 20, 4.9);
        assertThat(waiting.allowsDischarge()).isTrue();
        assertThat(USUAL.changesInS(waiting, new PackReading(9.9, 20, 20))).isCloseTo(0.1, within(1e-12));
        ProtectionState open = after(waiting, 9.9, 20, 0.2);
        assertThat(open.reasons()).containsExactly(Reason.UNDER_VOLTAGE);
        assertThat(open.allowsDischarge()).isFalse();
        assertThat(open.allowsCharge()).isTrue();
        assertThat(after(open, 10.4, 0, 3600)).isEqualTo(open);
        ProtectionState charged = after(open, 10.6, -10, 5);
        assertThat(charged).isEqualTo(ProtectionState.closed());
    }

    @Test
    void aBreakStartsTheDelayAnew() {
        ProtectionState waiting = after(ProtectionState.closed(), 9.9, 20, 4.9);
        ProtectionState broken = after(waiting, 10.0, 20, 0.001);
        assertThat(broken.heldS()).isEmpty();
        assertThat(after(broken, 9.9, 20, 4.9).allowsDischarge()).isTrue();
    }

    @Test
    void overCurrentTriesAgainAfterAWhile() {
        ProtectionState open = after(ProtectionState.closed(), 12.5, 250, 1);
        assertThat(open.reasons()).containsExactly(Reason.DISCHARGE_CURRENT);
        assertThat(USUAL.changesInS(open, new PackReading(13, 0, 20))).isEqualTo(30);
        assertThat(after(open, 13, 0, 29).allowsDischarge()).isFalse();
        assertThat(after(after(open, 13, 0, 29), 13, 0, 1).allowsDischarge()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "-25, false, false",
        "-19, false, true",
        "-1, false, true",
        "0, true, true",
        "25, true, true",
        "46, false, true",
        "61, false, false"
    })
    void temperatureAllows(double temperatureC, boolean charge, boolean discharge) {
        ProtectionState state = USUAL.next(ProtectionState.closed(), new PackReading(13.2, 0, temperatureC), 1);
        assertThat(state.allowsCharge()).isEqualTo(charge);
        assertThat(state.allowsDischarge()).isEqualTo(discharge);
    }

    @Test
    void coldLetsGoOnlyWellAboveFreezing() {
        ProtectionState cold = USUAL.next(ProtectionState.closed(), new PackReading(13.2, 0, -1), 1);
        assertThat(USUAL.next(cold, new PackReading(13.2, 0, 4.9), 3600).allowsCharge())
                .isFalse();
        assertThat(USUAL.next(cold, new PackReading(13.2, 0, 5), 0).allowsCharge())
                .isTrue();
    }

    @Test
    void severalReasonsMustAllLetGo() {
        ProtectionState both = USUAL.next(ProtectionState.closed(), new PackReading(15.5, -20, -1), 1);
        assertThat(both.reasons()).containsExactlyInAnyOrder(Reason.OVER_VOLTAGE, Reason.CHARGE_COLD);
        ProtectionState oneLeft = USUAL.next(both, new PackReading(13.2, 0, -1), 10);
        assertThat(oneLeft.reasons()).containsExactly(Reason.CHARGE_COLD);
        assertThat(oneLeft.allowsCharge()).isFalse();
        assertThat(oneLeft.allowsDischarge()).isTrue();
    }

    /** Stopping at each announced change and running on gives what any other division of the time gives. */
    @Test
    void dividingTheTimeChangesNothing() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            ProtectionState state = ProtectionState.closed();
            for (int k = 0; k < 20; k++) {
                PackReading reading = new PackReading(
                        9 + 7 * random.nextDouble(), 500 * random.nextDouble() - 250, 90 * random.nextDouble() - 25);
                double inS = USUAL.changesInS(state, reading);
                double durationS = Math.min(inS, 10 * random.nextDouble());
                ProtectionState whole = USUAL.next(state, reading, durationS);
                ProtectionState halves =
                        USUAL.next(USUAL.next(state, reading, 0.5 * durationS), reading, 0.5 * durationS);
                assertThat(halves.reasons()).isEqualTo(whole.reasons());
                assertThat(whole.reasons().equals(state.reasons())).isEqualTo(durationS < inS);
                state = whole;
            }
        }
    }

    @Test
    void theChargingWindowLiesInsideTheLimits() {
        assertThat(USUAL.charging().admits(14.4, 50)).isTrue();
        assertThat(USUAL.charging().admits(13.8, 50)).isFalse();
        assertThat(USUAL.charging().admits(14.4, 51)).isFalse();
        assertThat(USUAL.charging().mostV())
                .isLessThan(USUAL.limits().get(Reason.OVER_VOLTAGE).trip());
        assertThat(USUAL.charging().mostA())
                .isLessThan(USUAL.limits().get(Reason.CHARGE_CURRENT).trip());
    }

    @Test
    void refusesSettingsThatContradictThemselves() {
        assertThatThrownBy(() -> USUAL.with(Reason.UNDER_VOLTAGE, Limit.volts(10, 9.5, 1, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("release of UNDER_VOLTAGE is 9.5 V, allowed is 10.0");
        assertThatThrownBy(() -> USUAL.with(Reason.CHARGE_COLD, Limit.volts(10, 11, 1, 1)))
                .hasMessage("unit of CHARGE_COLD is V, allowed is °C");
        assertThatThrownBy(() -> Limit.volts(10, 11, -1, 1)).hasMessageContaining("tripDelayS is -1.0 s");
        Map<Reason, Limit> one = new EnumMap<>(Reason.class);
        assertThatThrownBy(() -> new PackProtection(one, USUAL.charging())).hasMessage("limit for UNDER_VOLTAGE");
        assertThatThrownBy(() -> new ChargingWindow(14.6, 14.2, 50)).hasMessageContaining("leastV is 14.6 V");
    }
}

package curbwatt.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RestVoltageTest {
    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void moreChargeNeverRestsAtLessVoltage(Chemistry chemistry) {
        RestVoltage rest = chemistry.constants().rest();
        double beforeV = 0;
        for (double charge = -0.2; charge < 1.2; charge += 0.001) {
            double nowV = rest.voltageV(charge, 0);
            assertThat(nowV).isGreaterThanOrEqualTo(beforeV - 1e-12);
            beforeV = nowV;
        }
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void theMeanIsThatOfTheCurve(Chemistry chemistry) {
        RestVoltage rest = chemistry.constants().rest();
        double step = 1e-4;
        double areaV = 0;
        for (int i = 0; i < 11_000; i++) {
            areaV += step * rest.voltageV((i + 0.5) * step, -20);
            assertThat(rest.meanV((i + 1) * step, -20)).isCloseTo(areaV / ((i + 1) * step), within(1e-6));
        }
    }

    @Test
    void refusesTablesThatFallOrDoNotSpanTheCharge() {
        assertThatThrownBy(() -> new RestVoltage.Table(List.of(0.0, 0.5, 1.0), List.of(12.0, 11.9, 13.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("voltage is 11.9 V, allowed is 12.0");
        assertThatThrownBy(() -> new RestVoltage.Table(List.of(0.1, 1.0), List.of(12.0, 13.0)))
                .hasMessageContaining("first charge is 0.1");
        assertThatThrownBy(() -> new RestVoltage.Line(13, 12, 0)).hasMessageContaining("fullV is 12.0 V");
    }
}

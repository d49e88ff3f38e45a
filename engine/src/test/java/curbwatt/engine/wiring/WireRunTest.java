package curbwatt.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WireRunTest {
    @Test
    void chassisReturnHasItsOwnResistance() {
        WireRun byWire = new WireRun(10, 5, new WireRun.Return.SameWire());
        WireRun byChassis = new WireRun(10, 5, new WireRun.Return.Chassis(0.004));
        assertThat(byChassis.loopOhm(20)).isCloseTo(byWire.loopOhm(20) / 2 + 0.004, within(1e-15));
    }

    @Test
    void refusesImpossibleValues() {
        assertThatThrownBy(() -> new WireRun(0, 5, new WireRun.Return.SameWire()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("areaMm2 is 0.0 mm², allowed is 0.01 to 1000.0 mm²");
        assertThatThrownBy(() -> new WireRun.Return.Chassis(-1)).hasMessageContaining("resistanceOhm is -1.0 Ohm");
        assertThatThrownBy(() -> new WireGauge(41)).hasMessageContaining("number is 41.0 AWG");
        assertThatThrownBy(() -> new WireRun(1, 1, new WireRun.Return.SameWire()).loopOhm(500))
                .hasMessageContaining("temperatureC is 500.0 °C");
    }
}

package curbwatt.charts.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeScaleTest {

    @ParameterizedTest
    @CsvSource({
        "60, s, 59.9, 0:00:59",
        "600, min, 252, 0:04:12",
        "6300, min, 2598.63, 0:43",
        "14400, h, 8099.9, 2:14",
        "14400, h, 8100, 2:15",
        "432000, h, 267120, 74:12",
        "2592000, d, 3600, 1:00"
    })
    void aScenesLengthDecidesTheUnitAndTheClock(double durationS, String unit, double timeS, String clock) {
        TimeScale scale = TimeScale.of(durationS);

        assertThat(scale.unit()).isEqualTo(unit);
        assertThat(scale.clock(timeS)).isEqualTo(clock);
    }
}

package curbwatt.charts.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTextTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0 s",
        "59.4, 59 s",
        "60, 1 min",
        "200, 3 min 20 s",
        "2880, 48 min",
        "3599.99999, 1 h",
        "6779, 1 h 52 min",
        "7199, 1 h 59 min",
        "14400, 4 h",
        "273600, 3 d 4 h"
    })
    void timesReadAsAPlannerSaysThem(double timeS, String text) {
        assertThat(PlainText.time(timeS)).isEqualTo(text);
    }

    @Test
    void timesInTablesKeepTheSecond() {
        assertThat(PlainText.timeToSecond(6727)).isEqualTo("1 h 52 min 07 s");
        assertThat(PlainText.timeToSecond(67)).isEqualTo("1 min 07 s");
    }

    @Test
    void numbersCarryTheirUnit() {
        assertThat(PlainText.volts(11.8)).isEqualTo("11.80 V");
        assertThat(PlainText.amperes(0.351)).isEqualTo("0.35 A");
        assertThat(PlainText.amperes(4.21)).isEqualTo("4.2 A");
        assertThat(PlainText.amperes(38.2)).isEqualTo("38 A");
        assertThat(PlainText.percent(0.706)).isEqualTo("71 %");
        assertThat(PlainText.number(-0.001, 2)).isEqualTo("0.00");
        assertThat(PlainText.number(-3.79, 2)).isEqualTo("−3.79");
    }

    @Test
    void namesAreQuotedSortedAndJoined() {
        assertThat(PlainText.names(List.of("Radios"))).isEqualTo("'Radios'");
        assertThat(PlainText.names(List.of("B", "A"))).isEqualTo("'A' and 'B'");
        assertThat(PlainText.names(List.of("C", "A", "B"))).isEqualTo("'A', 'B' and 'C'");
    }
}

package curbwatt.engine.load;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadPublishedTest {
    private static final String FLASH = "Flash patterns";

    /** A lamp's power grows with the 1.6th power of its voltage, its current with the 0.6th. */
    @ParameterizedTest
    @CsvSource({"12.0, 47.2", "12.8, 52.4", "13.5, 57.0", "14.4, 63.2"})
    void filamentPower(double voltageV, double powerW, TestReporter reporter) {
        new Published(
                        "Loads",
                        "lamp of 55 W at 13.2 V: power at " + voltageV + " V",
                        "W",
                        powerW,
                        0.06,
                        Obtained.DERIVED,
                        "textbook exponent 1.6 of a filament's power, recalled")
                .check(voltageV * lamp(0.6).currentA(voltageV), reporter);
    }

    /** The exponent that we suggest where none is known is 0.55: the same lamp within 1 %. */
    @ParameterizedTest
    @CsvSource({"12.0, 47.2", "12.8, 52.4", "13.5, 57.0", "14.4, 63.2"})
    void filamentPowerWithTheUsualExponent(double voltageV, double powerW, TestReporter reporter) {
        new Published(
                        "Loads",
                        "lamp of 55 W at 13.2 V, current's exponent 0.55: power at " + voltageV + " V",
                        "W",
                        powerW,
                        0.01 * powerW,
                        Obtained.DERIVED,
                        "textbook exponent 1.6 of a filament's power, recalled")
                .check(voltageV * lamp(0.55).currentA(voltageV), reporter);
    }

    /** On and off times of three flashes in a cycle (ms). */
    @ParameterizedTest
    @CsvSource({
        "200 250 200 250 200 850, 0.3077, 107.9, a US NHTSA letter on a turn-signal flasher (GF006498)",
        "160 200 160 200 160 620, 0.3200, 136.75, a US NHTSA letter on a hazard flasher (01931ztv)"
    })
    void litFractionAndMeanOfRates(
            String times, double litFraction, double ratePerMin, String source, TestReporter reporter) {
        double[] ms =
                Stream.of(times.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
        double[] edgesMs = new double[ms.length];
        double atMs = 0;
        for (int i = 0; i < ms.length; i++) {
            edgesMs[i] = atMs;
            atMs += ms[i];
        }
        LoadPattern.Flashing pattern = Loads.flashing("k", atMs, 0, edgesMs);
        new Published(
                        FLASH,
                        "share of time lit, ms on and off: " + times,
                        "1",
                        litFraction,
                        0.0001,
                        Obtained.DERIVED,
                        source)
                .check(pattern.onFraction(), reporter);
        double meanRate = IntStream.range(0, 3)
                .mapToDouble(i -> 60000 / (startMs(pattern, i + 1) - startMs(pattern, i)))
                .average()
                .orElseThrow();
        new Published(
                        FLASH,
                        "mean of the rates, ms on and off: " + times,
                        "/min",
                        ratePerMin,
                        0.1,
                        Obtained.RECALCULATED,
                        source)
                .check(meanRate, reporter);
    }

    private static double startMs(LoadPattern.Flashing pattern, int flash) {
        int count = pattern.onIntervals().size();
        int cycle = flash / count;
        return pattern.onIntervals().get(flash % count).fromMs()
                + cycle * pattern.clock().periodMs();
    }

    /** Four groups, each a quarter of the cycle later: at every instant one of them is lit. */
    @Test
    void sequentialArrowBoard(TestReporter reporter) {
        double periodMs = 60000.0 / 30;
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            LoadPattern group = Loads.flashing("board", periodMs, i * periodMs / 4, 0, periodMs / 4);
            new Published(
                            FLASH,
                            "sequential arrow board at 30/min, group " + (i + 1) + ", share of time lit",
                            "1",
                            0.25,
                            1e-12,
                            Obtained.SEEN,
                            "MUTCD, arrow boards: 25 to 40 flashes a minute, sequential phases of 25 % each")
                    .check(group.onFraction(), reporter);
            sum += group.onFraction();
        }
        assertThat(sum).isEqualTo(1);
    }

    private static Load lamp(double voltageExponent) {
        return new Load(
                "lamp", 55 / 13.2, 13.2, voltageExponent, 0, DropOut.never(), new LoadPattern.Continuous(), Set.of());
    }
}

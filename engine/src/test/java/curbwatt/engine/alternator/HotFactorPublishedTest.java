package curbwatt.engine.alternator;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hot output of the one machine whose cold output is published too. */
class HotFactorPublishedTest {
    @ParameterizedTest
    @CsvSource({"1300, 24, 16", "2500, 50, 41"})
    void coldToHot(double shaftRpm, double coldA, double hotA, TestReporter reporter) {
        new Published(
                        "Alternator output",
                        "hot output at " + shaftRpm + " /min, " + coldA + " A cold",
                        "A",
                        hotA,
                        1e-9,
                        Obtained.SEEN,
                        "a maker's public manual for a marine engine")
                .check(coldA * HotFactor.published().at(shaftRpm), reporter);
    }

    @Test
    void temperatureOfTheHotPair(TestReporter reporter) {
        new Published(
                        "Alternator output",
                        "air under the hood at which the hot output holds",
                        "°C",
                        93,
                        0,
                        Obtained.SEEN,
                        "claw-pole defaults of a US national laboratory's vehicle simulation, straight between two"
                                + " temperatures; 200 °F in federal specification KKK-A-1822E, page 33")
                .check(HotFactor.HOT_C, reporter);
    }
}

package curbwatt.engine.load;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RadioDutyPublishedTest {
    private static final String TOPIC = "Radio duty";

    /** Transmits at random; between that, receiving and standby are one mean current. */
    private static Load radio(double transmitA, double transmitShare, double betweenA) {
        return new Load(
                "radio",
                transmitA,
                12.8,
                -1,
                0,
                DropOut.never(),
                new LoadPattern.RandomDuty(60, 60 / transmitShare, betweenA, 1),
                Set.of());
    }

    @Test
    void runTime(TestReporter reporter) {
        double share = 1.0 / 60;
        double betweenA = (0.1 * 0.140 + (0.9 - share) * 0.040) / (1 - share);
        new Published(
                        TOPIC,
                        "1500 mAh; 1 min/h at 1.4 A, 10 % at 140 mA, else 40 mA: run time",
                        "h",
                        20.64,
                        0.05,
                        Obtained.RECALCULATED,
                        "a public worked example of a portable radio's run time (prints 20.6)")
                .check(1.5 / radio(1.4, share, betweenA).meanCurrentA(12.8), reporter);
    }

    @ParameterizedTest
    @CsvSource({"0.10, 0.10, 3.20", "0.05, 0.05, 2.10"})
    void meanOfATransceiver(double transmitShare, double receiveShare, double meanA, TestReporter reporter) {
        double standbyShare = 1 - transmitShare - receiveShare;
        double betweenA = (receiveShare * 2 + standbyShare * 1) / (1 - transmitShare);
        new Published(
                        TOPIC,
                        "22 A sending, 2 A receiving, 1 A standby; shares " + transmitShare + "/" + receiveShare,
                        "A",
                        meanA,
                        0.005,
                        Obtained.DERIVED,
                        "10-10-80: NIJ transceiver battery test; 5-5-90: convention of the trade")
                .check(radio(22, transmitShare, betweenA).meanCurrentA(12.8), reporter);
    }
}

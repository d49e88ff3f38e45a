package curbwatt.engine.protection;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The usual settings of a 100 Ah pack against what makers print; the tolerances span the makers. */
class ProtectionPublishedTest {
    private static final String TABLE = "a maker's public table of settings";
    private static final String BOARD = "public data sheet of a four-cell protection board (cell figures times four)";
    private static final String PACK = "public data sheet of a 12.8 V pack";
    private static final String NOTE = "public note on charging in the cold";

    @ParameterizedTest
    @CsvSource({
        "UNDER_VOLTAGE, trip, 10.0, 0, " + TABLE,
        "UNDER_VOLTAGE, release, 10.5, 0, " + TABLE,
        "OVER_VOLTAGE, trip, 15.2, 0, " + TABLE,
        "OVER_VOLTAGE, release, 14.4, 0, " + TABLE,
        "UNDER_VOLTAGE, trip, 8.8, 1.2, " + BOARD,
        "UNDER_VOLTAGE, release, 10.8, 0.4, " + BOARD,
        "UNDER_VOLTAGE, trip delay, 5, 1, " + BOARD,
        "OVER_VOLTAGE, trip, 15.0, 0.2, " + BOARD,
        "OVER_VOLTAGE, release, 14.2, 0.2, " + BOARD,
        "OVER_VOLTAGE, trip delay, 1.25, 0.75, " + BOARD,
        "DISCHARGE_CURRENT, trip, 250, 50, " + BOARD,
        "DISCHARGE_CURRENT, trip delay, 1, 0.5, " + BOARD,
        "UNDER_VOLTAGE, trip, 10, 0, " + PACK,
        "CHARGE_COLD, trip, 0, 0, " + PACK,
        "CHARGE_HEAT, trip, 45, 0, " + PACK,
        "DISCHARGE_COLD, trip, -20, 0, " + PACK,
        "DISCHARGE_HEAT, trip, 60, 0, " + PACK,
        "CHARGE_COLD, trip, 0, 0, " + NOTE
    })
    void usualSettings(
            Reason reason, String figure, double published, double tolerance, String source, TestReporter reporter) {
        Limit limit = PackProtection.usual(100, 100).limits().get(reason);
        double ours = switch (figure) {
            case "trip" -> limit.trip();
            case "release" -> limit.release();
            default -> limit.tripDelayS();
        };
        new Published(
                        "LFP protection",
                        reason + ", " + figure + ", 100 Ah and 100 A",
                        figure.equals("trip delay") ? "s" : limit.unit(),
                        published,
                        tolerance,
                        Obtained.SEEN,
                        source)
                .check(ours, reporter);
    }
}

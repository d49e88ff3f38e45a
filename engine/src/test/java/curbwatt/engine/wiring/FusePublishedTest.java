package curbwatt.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When fuses open. */
class FusePublishedTest {
    private static final String TOPIC = "Fuse";
    private static final String SHEET = "public data sheet as copied in public repositories";
    private static final String DIN = "DIN 72581-3 form E as a public fuse page has it";

    @ParameterizedTest
    @CsvSource({
        "BLADE, 1.35, 0.75, 600, " + SHEET,
        "BLADE, 1.6, 0.25, 50, " + SHEET,
        "BLADE, 2, 0.15, 5, " + SHEET,
        "BLADE, 3.5, 0.08, 0.5, " + SHEET,
        "MAXI, 1.35, 60, 1800, " + DIN,
        "MAXI, 2, 2, 60, " + DIN,
        "MAXI, 3.5, 0.2, 7, " + DIN,
        "MAXI, 6, 0.04, 1, " + SHEET
    })
    void opensBetween(
            FuseType type, double multiple, double earliestS, double latestS, String source, TestReporter reporter) {
        String what = type + " at " + multiple + " times its rating, ";
        time(what + "earliest", earliestS, 1e-9, source).check(type.earliestS(multiple), reporter);
        time(what + "latest", latestS, 1e-9, source).check(type.latestS(multiple), reporter);
        // the middle of the band on its logarithmic axis: within it, and as far from one end as from the other
        assertThat(type.typicalS(multiple)).isCloseTo(Math.sqrt(earliestS * latestS), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"BLADE, 6, 0.15, 0, " + SHEET, "MAXI, 2, 50, 10, " + SHEET})
    void opensBy(
            FuseType type, double multiple, double latestS, double toleranceS, String source, TestReporter reporter) {
        time(type + " at " + multiple + " times its rating, latest", latestS, toleranceS + 1e-9, source)
                .check(type.latestS(multiple), reporter);
    }

    @ParameterizedTest
    @CsvSource({"BLADE", "MAXI"})
    void lastsAtItsRating(FuseType type, TestReporter reporter) {
        time(type + " just above its rating, earliest", 360_000, 10, "100 h at the rating: " + SHEET)
                .check(type.earliestS(1 + 1e-7), reporter);
    }

    @ParameterizedTest
    @CsvSource({"-40, 40", "20, 40", "65, 34", "85, 30", "110, 25", "125, 22"})
    void warmAirTakesFromTheRating(double ambientC, double effectiveA, TestReporter reporter) {
        new Published(
                        TOPIC,
                        "40 A maxi in air of " + ambientC + " °C, rating left",
                        "A",
                        effectiveA,
                        1e-9,
                        Obtained.SEEN,
                        "public data sheet of a maxi fuse")
                .check(new InstalledFuse(new FuseRating(FuseType.MAXI, 40), ambientC).effectiveA(), reporter);
    }

    /** Most that DIN 72581-3 allows; the maker's figures are below. */
    @ParameterizedTest
    @CsvSource({"MAXI, 40, 100, 0, " + DIN, "MAXI, 40, 75, 25, " + SHEET, "BLADE, 40, 96, 4, " + SHEET})
    void drop(FuseType type, double ratedA, double dropMv, double toleranceMv, String source, TestReporter reporter) {
        new Published(
                        TOPIC,
                        type + " of " + ratedA + " A, drop at its rating",
                        "mV",
                        dropMv,
                        toleranceMv + 1e-9,
                        Obtained.SEEN,
                        source)
                .check(1e3 * ratedA * new FuseRating(type, ratedA).resistanceOhm(), reporter);
    }

    private static Published time(String what, double timeS, double toleranceS, String source) {
        return new Published(TOPIC, what, "s", timeS, toleranceS, Obtained.SEEN, source);
    }
}

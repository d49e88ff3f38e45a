package curbwatt.engine.sizing;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import curbwatt.engine.numeric.LinearTable;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published worked examples of the paper methods, to the digit that they print. */
class SizingPublishedTest {
    private static final String TOPIC = "Sizing by the paper methods";
    private static final String LECTURE =
            "K. Webb, Oregon State University, ESE 471 lecture on battery bank sizing (method of IEEE 485)";
    private static final String LECTURE_1013 =
            "K. Webb, Oregon State University, ESE 471 lecture on battery bank sizing (method of IEEE 1013)";
    private static final String WORKSHEET = "sample worksheet in a public implementation of IEEE 1115-2014";

    /** The lecture's 104 Ah battery to 1.8 V a cell. */
    private static final CapacityFactor LECTURED = CapacityFactor.Tabled.ofCurrents(
            104,
            minutes(1, 15, 30, 60, 120, 180, 240, 300, 360, 420, 480, 600, 720, 1440),
            List.of(189.0, 133.0, 94.0, 58.0, 37.0, 27.0, 22.0, 18.0, 16.0, 14.0, 13.0, 11.0, 9.3, 5.1));

    private static final List<DutyPeriod> CYCLE =
            List.of(period(5, 15), period(35, 10), period(15, 75), period(45, 10), period(5, 10));

    private static List<Double> minutes(double... values) {
        return DoubleStream.of(values).map(value -> 60 * value).boxed().toList();
    }

    private static DutyPeriod period(double currentA, double lengthMin) {
        return new DutyPeriod(currentA, 60 * lengthMin);
    }

    @ParameterizedTest
    @CsvSource({"15, 0.782", "25, 0.998", "10, 0.699", "60, 1.79", "100, 2.472", "110, 2.641", "120, 2.811", "20, 0.890"
    })
    void capacityFactors(double timeMin, double factor, TestReporter reporter) {
        new Published(
                        TOPIC,
                        "capacity factor of a 104 Ah battery to 1.8 V a cell, %.0f min".formatted(timeMin),
                        "Ah/A",
                        factor,
                        timeMin == 60 ? 0.005 : 0.0006,
                        Obtained.RECALCULATED,
                        LECTURE)
                .check(LECTURED.perAmpereH(60 * timeMin), reporter);
    }

    @ParameterizedTest
    @CsvSource({"1, 3.91", "2, 25.97", "3, 37.92", "4, 61.44", "5, 41.75"})
    void sectionsOfTheLecture(int section, double sizeAh, TestReporter reporter) {
        new Published(
                        TOPIC,
                        "uncorrected size of section " + section + " of five; 5 A for 2 h, with 30, 10 and 40 A on top",
                        "Ah",
                        sizeAh,
                        // its factors are printed to three digits, and multiplied by up to 45 A
                        0.02,
                        Obtained.RECALCULATED,
                        LECTURE)
                .check(SectionSizing.of(CYCLE, LECTURED).sectionsAh().get(section - 1), reporter);
    }

    @Test
    void correctedSizeOfTheLecture(TestReporter reporter) {
        double uncorrectedAh = SectionSizing.of(CYCLE, LECTURED).uncorrectedAh();
        new Published(
                        TOPIC,
                        "that duty at 50 °F, margin 1.15, replaced at 80 %",
                        "Ah",
                        105.11,
                        0.02,
                        Obtained.RECALCULATED,
                        LECTURE)
                .check(
                        new SizingFactors(TemperatureCorrection.withoutCredit(10), 1.15, 1 / 0.8)
                                .corrected(uncorrectedAh),
                        reporter);
    }

    @Test
    void oneCurrentOfTheLecture(TestReporter reporter) {
        new Published(TOPIC, "100 A for 2 h, uncorrected", "Ah", 281, 0.5, Obtained.RECALCULATED, LECTURE)
                .check(SectionSizing.of(List.of(period(100, 120)), LECTURED).uncorrectedAh(), reporter);
    }

    /** Its factors come with the cold in them, time by time. */
    @ParameterizedTest
    @CsvSource({"1, 25.92, 0.005", "2, 69.68, 0.005", "3, 78.6, 0.5"})
    void worksheet(int section, double sizeAh, double toleranceAh, TestReporter reporter) {
        CapacityFactor factor = new CapacityFactor.Tabled(new LinearTable(
                minutes(4, 5, 45, 49, 50, 54),
                List.of(0.21 * 1.08, 0.24 * 1.08, 1.16 * 1.04, 1.23 * 1.04, 1.25 * 1.04, 1.33 * 1.04)));
        new Published(
                        TOPIC,
                        "section " + section + " of three; 100 A 5 min, 50 A 45 min, 70 A 4 min, factors with cold",
                        "Ah",
                        sizeAh,
                        toleranceAh,
                        section < 3 ? Obtained.RECALCULATED : Obtained.SEEN,
                        WORKSHEET)
                .check(
                        SectionSizing.of(List.of(period(100, 5), period(50, 45), period(70, 4)), factor)
                                .sectionsAh()
                                .get(section - 1),
                        reporter);
    }

    @ParameterizedTest
    @CsvSource({
        "40, 1.300",
        "50, 1.190",
        "60, 1.110",
        "68, 1.056",
        "70, 1.040",
        "77, 1.000",
        "90, 0.940",
        "100, 0.910",
        "120, 0.860"
    })
    void coldMakesABatteryLarger(double fahrenheit, double factor, TestReporter reporter) {
        new Published(
                        TOPIC,
                        "temperature factor at %.0f °F".formatted(fahrenheit),
                        "",
                        factor,
                        1e-9,
                        Obtained.SEEN,
                        "IEEE 485 table 1, in a public implementation")
                .check(TemperatureCorrection.factor((fahrenheit - 32) / 1.8), reporter);
    }

    @Test
    void daysOfAutonomy(TestReporter reporter) {
        // 6 A for 3 h and for 5 h, four starts of a minute at 15 A, 0.1 A all day
        double dailyAh = 6 * 3 + 6 * 5 + 15 * 4 / 60.0 + 0.1 * 24;
        AutonomySizing sizing = new AutonomySizing(dailyAh, 6, 0.8, 0.2, 0.8, 1.1);
        check("charge of a day", 51.4, dailyAh, reporter);
        check("charge of six days", 308.4, sizing.unadjustedAh(), reporter);
        check("size for 80 % over six days", 385.5, sizing.forAutonomyAh(), reporter);
        check("size for 20 % in a day", 257, sizing.forDayAh(), reporter);
        check("size for replacement at 80 %", 385.5, sizing.forEndOfLifeAh(), reporter);
        check("the size with a margin of 1.1", 424.05, sizing.capacityAh(), reporter);
        new Published(TOPIC, "its functional rate at 6.1 A", "h", 69.5, 0.05, Obtained.RECALCULATED, LECTURE_1013)
                .check(sizing.functionalRateH(6.1), reporter);
    }

    private static void check(String what, double valueAh, double foundAh, TestReporter reporter) {
        new Published(TOPIC, what, "Ah", valueAh, 0.005, Obtained.RECALCULATED, LECTURE_1013).check(foundAh, reporter);
    }
}

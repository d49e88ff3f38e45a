package curbwatt.engine.alternator;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printed output tables come back exactly, and nothing between their points leaves the points' range. */
class OutputTablePublishedTest {
    private static final double ROUNDING_A = 1e-12;

    @ParameterizedTest
    @CsvSource({
        "1200 1500 2000 4000 5000 8000, 48 69 85 100 100 100, US Army TM 9-2320-280-34 table 6-A.5",
        "1200 1500 2000 3000 5000 8000, 37 90 132 160 190 190, US Army TM 9-2320-387-24-2 table 18-3",
        "1200 1500 2000 3500 5000 8000, 44 187 302 397 397 397, US Army TM 9-2320-387-24-2 table 18-7",
        "1000 2000 3000 4000 5000 6000 7000 8000, 0 80 130 145 150 155 158 160, "
                + "alternator map of a US national laboratory's vehicle simulation"
    })
    void tables(String speeds, String outputs, String source, TestReporter reporter) {
        double[] rpm = numbers(speeds);
        double[] outputA = numbers(outputs);
        MeasuredOutputCurve curve = new MeasuredOutputCurve(IntStream.range(0, rpm.length)
                .mapToObj(i -> new MeasuredOutputCurve.Point(rpm[i], outputA[i]))
                .toList());
        for (int i = 0; i < rpm.length; i++) {
            String what = outputA[rpm.length - 1] + " A machine, 28 V, at " + rpm[i] + " /min";
            new Published("Alternator output", what, "A", outputA[i], 0, Obtained.SEEN, source)
                    .check(curve.maximumA(rpm[i]), reporter);
        }
        double beforeA = 0;
        for (int i = 1; i < rpm.length; i++) {
            for (double n = rpm[i - 1]; n < rpm[i]; n += 1) {
                double hereA = curve.maximumA(n);
                assertThat(hereA)
                        .isBetween(outputA[i - 1] - ROUNDING_A, outputA[i] + ROUNDING_A)
                        .isGreaterThanOrEqualTo(beforeA - ROUNDING_A);
                beforeA = hereA;
            }
        }
        assertThat(curve.maximumA(rpm[0] - 1)).isZero();
        assertThat(curve.maximumA(20000)).isEqualTo(outputA[rpm.length - 1]);
    }

    private static double[] numbers(String words) {
        return Stream.of(words.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    }
}

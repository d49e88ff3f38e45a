package curbwatt.engine.wear;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CyclePublishedTest {

    /** The example's history in tenths, lifted so that it lies where a state of charge lies. */
    private static final List<Double> EXAMPLE = Stream.of(-2, 1, -3, 5, -1, 3, -4, 4, -2)
            .map(peak -> (peak + 5) / 10.0)
            .toList();

    @ParameterizedTest
    @CsvSource({"3, 0.5", "4, 1.5", "5, 0", "6, 0.5", "7, 0", "8, 1.0", "9, 0.5", "10, 0"})
    void rainflowExample(int range, double cycles, TestReporter reporter) {
        double ours = 0.5
                * CycleCount.of(EXAMPLE).cycles().stream()
                        .filter(cycle -> Math.round(10 * cycle.depthFraction()) == range)
                        .mapToInt(Cycle::halfCycles)
                        .sum();
        new Published(
                        "Cycle counting",
                        "peaks −2 1 −3 5 −1 3 −4 4 −2, cycles of range " + range,
                        "",
                        cycles,
                        0,
                        Obtained.SEEN,
                        "ASTM E1049-85 figure 6, as public test suites of several counting libraries give it")
                .check(ours, reporter);
    }

    @ParameterizedTest
    @CsvSource({"0.25, 0.50, 1.32", "0.50, 1.00, 1.30"})
    void exponentOfTheAbsorbedMatTable(double shallow, double deep, double exponent, TestReporter reporter) {
        CycleLife life = CycleLife.absorbedMat();
        double ours = Math.log(life.cyclesAt(shallow) / life.cyclesAt(deep)) / Math.log(deep / shallow);
        new Published(
                        "Cycle life",
                        "absorbed mat, exponent of cycles in depth, " + shallow + " to " + deep,
                        "",
                        exponent,
                        0.005,
                        Obtained.DERIVED,
                        "N. Calder's boat owner's manual, as quoted in a public forum")
                .check(ours, reporter);
    }

    /** One table against another source's figure: what the spread is for. */
    @ParameterizedTest
    @CsvSource({"0.50, 400, an entry-level battery for cycling", "0.50, 750, a flooded golf-cart battery"})
    void absorbedMatAgainstOthers(double depth, double cycles, String battery, TestReporter reporter) {
        new Published(
                        "Cycle life",
                        "absorbed-mat table against " + battery + ", " + depth + " depth",
                        "cycles",
                        cycles,
                        400,
                        Obtained.SEEN,
                        "public figures of battery owners and dealers")
                .check(CycleLife.absorbedMat().cyclesAt(depth), reporter);
    }
}

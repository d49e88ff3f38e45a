package curbwatt.engine.battery.label;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The battery fitted to a label passes the label's own tests. */
class LabelFitPublishedTest {
    private static final double RELATIVE_TOLERANCE = 1e-6;
    private static final String TESTS = "SAE J537 and SAE J3012 tests, figures of ";

    @ParameterizedTest
    @CsvSource({
        "FLOODED, 74, 130, 680, SEEN, a label in a public repository",
        "FLOODED, 73, 115, 600, SEEN, a truck maker's manual (C20 by a charger maker's rule from the reserve)",
        "FLOODED, 73, 115, 770, SEEN, a truck maker's manual (C20 by a charger maker's rule from the reserve)",
        "FLOODED, 95.5, 160, 750, SEEN, a truck maker's manual (C20 by a charger maker's rule from the reserve)",
        "FLOODED, 105.5, 180, 625, SEEN, a truck maker's manual (C20 by a charger maker's rule from the reserve)",
        "FLOODED, 70, 120, 650, PRACTICE, a usual label",
        "FLOODED, 220, 440, 1100, PRACTICE, a usual label",
        "AGM, 92, 160, 850, PRACTICE, a usual label",
        "AGM, 70, 120, 760, PRACTICE, a usual label",
        "AGM, 100, 190, 900, PRACTICE, a usual label"
    })
    void passesItsTests(
            Chemistry chemistry,
            double c20Ah,
            double reserveMin,
            double coldCrankingA,
            Obtained obtained,
            String source,
            TestReporter reporter) {
        FittedLabel fitted = LabelFit.of(BatteryLabel.of(chemistry, c20Ah, reserveMin, coldCrankingA));
        LabelFigures tests = LabelTestRun.all(Battery.asNew(fitted.parameters()));
        String name = chemistry + " " + c20Ah + " Ah/" + reserveMin + " min/" + coldCrankingA + " A: ";
        row(name + "20 h test", "Ah", c20Ah, obtained, source, tests.c20Ah(), reporter);
        row(name + "reserve test", "min", reserveMin, obtained, source, tests.reserveMin(), reporter);
        row(name + "cold cranking test", "A", coldCrankingA, obtained, source, tests.coldCrankingA(), reporter);
    }

    private static void row(
            String what,
            String unit,
            double value,
            Obtained obtained,
            String source,
            double ours,
            TestReporter reporter) {
        new Published("Label tests", what, unit, value, RELATIVE_TOLERANCE * value, obtained, TESTS + source)
                .check(ours, reporter);
    }
}

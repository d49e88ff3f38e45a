package curbwatt.engine.battery.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PeukertPublishedTest {
    private static final String SOURCE = "Peukert's law in its rated form, t = H (C/(I H))^n, H = 20 h";

    @ParameterizedTest
    @CsvSource({
        "100, 5, 1.2, 20.0000, 100.000", "100, 10, 1.1, 9.3303, 93.303", "100, 10, 1.2, 8.7055, 87.055",
        "100, 10, 1.3, 8.1225, 81.225", "100, 10, 1.4, 7.5786, 75.786", "100, 7.5, 1.3, 11.8062, 88.547",
        "100, 20, 1.1, 4.3528, 87.055", "100, 25, 1.05, 3.6907, 92.268", "100, 25, 1.1, 3.4054, 85.134",
        "100, 25, 1.2, 2.8991, 72.478", "100, 50, 1.1, 1.5887, 79.433", "100, 100, 1.1, 0.7411, 74.113",
        "120, 15, 1.3, 6.0773, 91.159"
    })
    void life(
            double ratedAh, double currentA, double exponent, double lifeH, double deliveredAh, TestReporter reporter) {
        PeukertLaw law = new PeukertLaw(ratedAh, 20, exponent);
        String what = ratedAh + " Ah, n = " + exponent + ", " + currentA + " A";
        new Published("Peukert's law", what, "h", lifeH, 0.0001, Obtained.DERIVED, SOURCE)
                .check(law.lifeH(currentA), reporter);
        new Published("Peukert's law", what, "Ah", deliveredAh, 0.001, Obtained.DERIVED, SOURCE)
                .check(law.deliveredAh(currentA), reporter);
        assertThat(law.currentA(law.lifeH(currentA))).isCloseTo(currentA, within(1e-12 * currentA));
    }

    /** Public pages that take the 20 h rating for the 1 A capacity. Their numbers must not come out. */
    @ParameterizedTest
    @CsvSource({"100, 5, 1.2, 14.5", "250, 20, 1.3, 5.0886"})
    void isNotTheOneAmpereForm(double ratedAh, double currentA, double exponent, double wrongH) {
        assertThat(new PeukertLaw(ratedAh, 20, exponent).lifeH(currentA)).isGreaterThan(1.3 * wrongH);
    }

    /** A public page lists 89, 79, 65 and 58 Ah for n = 1.1; the law gives 4 to 28 % more. */
    @ParameterizedTest
    @CsvSource({"10, 89", "20, 79", "50, 65", "100, 58"})
    void isNotTheThirdPagesTable(double currentA, double wrongAh) {
        assertThat(new PeukertLaw(100, 20, 1.1).deliveredAh(currentA)).isGreaterThan(1.04 * wrongAh);
    }

    @Test
    void exponentOfALabel(TestReporter reporter) {
        new Published(
                        "Peukert's law",
                        "exponent implied by a label of 74 Ah and 130 min",
                        "1",
                        1.163,
                        0.0005,
                        Obtained.DERIVED,
                        "n = ln(t2/t1)/ln(I1/I2), a monitor maker's public manual; label in a public repository")
                .check(PeukertLaw.exponentFrom(74 / 20.0, 20, 25, 130 / 60.0), reporter);
    }
}

package curbwatt.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curbwatt.engine.check.Published.Obtained;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValidationPageTest {

    private final ValidationRow rest = row("ATest", "rest", "Rest", "rest voltage", 12.65, 0.05, 12.6499999999999);
    private final ValidationRow reserve = row("ATest", "reserve", "Label tests", "reserve | 25 A", 120, 1, 119.3);
    private final ValidationRow crank = row("BTest", "a", "Label tests", "cranking at < 0", 7.2, 0.01, 7.2034);

    @Test
    void listsTopicsInOrderWithTheirRows() {
        assertThat(ValidationPage.text(List.of(rest, reserve, crank)))
                .startsWith("# Validation\n")
                .endsWith("""

                        ## Label tests

                        | Quantity and conditions | Published | Ours | Difference | Tolerance | Unit | Obtained | Source |
                        |---|---:|---:|---:|---:|---|---|---|
                        | reserve \\| 25 A | 120 | 119.3 | -0.7 | 1 | V | seen | a book, p. 3 |
                        | cranking at &lt; 0 | 7.2 | 7.203 | +0.003 | 0.01 | V | seen | a book, p. 3 |

                        ## Rest

                        | Quantity and conditions | Published | Ours | Difference | Tolerance | Unit | Obtained | Source |
                        |---|---:|---:|---:|---:|---|---|---|
                        | rest voltage | 12.65 | 12.650 | 0 | 0.05 | V | seen | a book, p. 3 |
                        """);
    }

    @Test
    void doesNotDependOnTheOrderOfTests() {
        assertThat(ValidationPage.text(List.of(crank, reserve, rest)))
                .isEqualTo(ValidationPage.text(List.of(rest, reserve, crank)));
    }

    @Test
    void keepsTheOrderWithinATest() {
        ValidationRow second = row("ATest", "reserve", "Label tests", "a later row", 1, 1, 1);
        assertThat(ValidationPage.text(List.of(reserve, second))).containsSubsequence("reserve \\|", "a later row");
    }

    @Test
    void saysHowEachKindWasObtained() {
        String page = ValidationPage.text(List.of(rest));
        for (Obtained obtained : Obtained.values()) {
            assertThat(page).contains(": " + obtained.meaning());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "12.65, 0.05, 12.650",
        "12.649999999999999, 0.05, 12.650",
        "0.30000000000000004, 1e-15, 0.30000000",
        "119.3, 5, 119.3",
        "119.3, 50, 119",
        "0, 0.1, 0",
        "-1e-17, 0.1, 0",
        "2.5, 0, 2.5000000",
        "12.344999, 0.1, 12.34",
        "12.34500000000001, 0.1, 12.35",
        "12.34499999999999, 0.1, 12.35"
    })
    void showsATenthOfTheTolerance(double value, double tolerance, String text) {
        assertThat(Digits.resolved(value, tolerance, value)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"12.65, 12.65", "100, 100", "0.1, 0.1", "0.12649999999999997, 0.1265", "1.5e-9, 1.5E-9", "0, 0"})
    void writesNumbersAsOneWould(double value, String text) {
        assertThat(Digits.plain(value)).isEqualTo(text);
    }

    @Test
    void aRatioHasNoUnit() {
        Published ratio = new Published("Ratios", "a ratio", "", 1, 0, Obtained.DERIVED, "a book");
        assertThat(Published.of(ratio.entry(1))).isEqualTo(ratio);
        assertThat(ratio.entry(1).values()).noneMatch(String::isBlank);
    }

    @Test
    void aRowSurvivesTheReport() {
        Published published = rest.published();
        assertThat(Published.of(published.entry(12.6))).isEqualTo(published);
        assertThat(Published.isEntry(published.entry(12.6))).isTrue();
    }

    @Test
    void refusesAValueThatCannotBeChecked() {
        assertThatThrownBy(() -> row("ATest", "a", "Rest", "rest voltage", Double.NaN, 0.05, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rest voltage");
        assertThatThrownBy(() -> row("ATest", "a", "Rest", "rest voltage", 1, -0.05, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-0.05");
        assertThatThrownBy(() -> row("ATest", "a", " ", "rest voltage", 1, 0.05, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("topic");
    }

    private static ValidationRow row(
            String type, String method, String topic, String what, double value, double tolerance, double ours) {
        return new ValidationRow(
                type, method, new Published(topic, what, "V", value, tolerance, Obtained.SEEN, "a book, p. 3"), ours);
    }
}

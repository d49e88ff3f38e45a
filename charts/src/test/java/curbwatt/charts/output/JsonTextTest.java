package curbwatt.charts.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JsonTextTest {

    @Test
    void spellsATreeInOrder() {
        JsonObject root = new JsonObject()
                .with("b", 1)
                .with("a", "quote \" backslash \\ line\n bell \u0007")
                .with("list", List.of(new JsonObject().with("x", true)))
                .with("numbers", List.of(1.5, 2.0))
                .with("missing", OptionalDouble.empty())
                .with("infinite", Double.NEGATIVE_INFINITY)
                .with("nothing", List.of());
        assertThat(JsonText.of(root)).isEqualTo("""
                {
                  "b": 1,
                  "a": "quote \\" backslash \\\\ line\\n bell \\u0007",
                  "list": [
                    {
                      "x": true
                    }
                  ],
                  "numbers": [1.5, 2],
                  "missing": null,
                  "infinite": null,
                  "nothing": []
                }
                """);
    }

    @Test
    void numbersKeepTwelveDigitsAndNoMore() {
        assertThat(DigitText.of(1.0 / 3)).isEqualTo("0.333333333333");
        assertThat(DigitText.of(2880)).isEqualTo("2880");
        assertThat(DigitText.of(-0.0)).isEqualTo("0");
        assertThat(DigitText.of(123456.7890123456)).isEqualTo("123456.789012");
        assertThat(DigitText.of(1.25e-19)).isEqualTo("1.25E-19");
        assertThat(DigitText.of(0.1 + 0.2)).isEqualTo("0.3");
        assertThatThrownBy(() -> DigitText.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}

package curbwatt.charts.style;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StyleTest {

    /** Relative luminance as the Web Content Accessibility Guidelines 2.1 define it. */
    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static double contrast(Color one, Color other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    /** 4.5 to 1 is what the guidelines ask for text (criterion 1.4.3). */
    @ParameterizedTest
    @CsvSource({"INK", "MUTED", "VOLTAGE", "SENSED", "EQUIPMENT", "CHARGE", "ALTERNATOR_INK", "ALARM", "WARNING", "HELD"
    })
    void coloursThatCarryTextStandOutFromPaper(Palette colour) {
        assertThat(contrast(colour.color(), Palette.PAPER.color())).isGreaterThan(4.5);
    }

    @Test
    void neighboursInAStackDifferInAGreyPrint() {
        for (int i = 1; i < Palette.groups(); i++) {
            assertThat(contrast(Palette.group(i - 1), Palette.group(i))).isGreaterThan(2);
        }
        assertThat(contrast(Palette.ALTERNATOR.color(), Palette.BATTERY.color()))
                .isGreaterThan(1.02);
        assertThat(contrast(Palette.EQUIPMENT.color(), Palette.BATTERY.color())).isGreaterThan(1.5);
    }

    @Test
    void coloursReadTheSameInAStyleSheet() {
        assertThat(Palette.VOLTAGE.css()).isEqualTo("#0072b2");
        assertThat(Color.decode(Palette.INK.css())).isEqualTo(Palette.INK.color());
    }

    @Test
    void theTypefaceHoldsEverySignThatFiguresNeed() {
        String signs = "AZaz09 °·µΩ−–—…≈≤≥±×÷√→↑²³%‰“”‘’äöüßéñçøåłšžőğ\u202f\u2009\u200a";

        assertThat(Typeface.prepare().regular(12).canDisplayUpTo(signs)).isEqualTo(-1);
        assertThat(Typeface.prepare().strong(12).canDisplayUpTo(signs)).isEqualTo(-1);
        assertThat(Typeface.prepare().regular(12).getFamily(Locale.ROOT)).isEqualTo("Inter");
        assertThat(Typeface.css()).contains("'Inter'", "'Inter SemiBold'").hasSizeLessThan(40_000);
    }

    @ParameterizedTest
    @CsvSource({
        "11.62, 14.38, 7, 0.5, 12.0",
        "0, 8.4, 8, 2, 12",
        "12.0, 12.2, 7, 0.05, 12.00",
        "0, 4000, 12, 500, 12",
        "0, 174.9, 8, 50, 12"
    })
    void ticksAreRoundFewAndEven(double from, double to, int most, double unit, String twelve) {
        NumberAxis axis = new NumberAxis();
        HouseStyle.ticks(axis, from, to, most, "0");

        assertThat(axis.getTickUnit().getSize()).isEqualTo(unit);
        assertThat(axis.getTickUnit().valueToString(12)).isEqualTo(twelve);
    }
}

package curbwatt.charts.output;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers for other tools: twelve significant digits, no trailing zeros, the same on every machine. */
final class DigitText {

    private static final MathContext DIGITS = new MathContext(12);
    private static final int LONGEST_PLAIN = 15;

    private DigitText() {}

    /**
     * Spells a number.
     *
     * @param value a finite number
     * @throws IllegalArgumentException if it is not
     */
    static String of(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(value + " can't be spelled in a file; say null instead");
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value, DIGITS).stripTrailingZeros();
        return rounded.scale() > LONGEST_PLAIN + 3 || rounded.scale() < -LONGEST_PLAIN
                ? rounded.toString()
                : rounded.toPlainString();
    }
}

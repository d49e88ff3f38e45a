package curbwatt.scenarios.check;

import java.math.BigDecimal;
import java.math.MathContext;

/** A number within a sentence. */
final class Shown {
    private static final MathContext DIGITS = new MathContext(6);

    private Shown() {}

    /** Returns a number with six digits at most, without trailing zeros or a power of ten. */
    static String number(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}

package curbwatt.engine.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, with the digits that mean something and none of the noise in the last bits. */
final class Digits {

    /** Machines differ beyond about the fifteenth digit; rounding here first keeps ties from falling either way. */
    private static final MathContext SOUND = new MathContext(12, RoundingMode.HALF_UP);

    /** More digits than a published value has; a tolerance can be finer than a table needs. */
    private static final MathContext SHOWN = new MathContext(8, RoundingMode.HALF_UP);

    private Digits() {}

    /** The number as someone would write it down: at most eight significant digits, no trailing zeros. */
    static String plain(double value) {
        BigDecimal number = new BigDecimal(value).round(SHOWN).stripTrailingZeros();
        double size = Math.abs(value);
        return size == 0.0 || (size >= 1e-6 && size < 1e9) ? number.toPlainString() : number.toString();
    }

    /** The number to a tenth of the tolerance's first digit. */
    static String resolved(double value, double tolerance, double scale) {
        return fixed(sound(value), tolerance, scale);
    }

    /** How much more the one is than the other, with a sign, as fine as {@link #resolved}. */
    static String difference(double value, double other, double tolerance, double scale) {
        String text = fixed(sound(value).subtract(sound(other)), tolerance, scale);
        return text.equals("0") || text.startsWith("-") ? text : "+" + text;
    }

    private static BigDecimal sound(double value) {
        return new BigDecimal(value).round(SOUND);
    }

    private static String fixed(BigDecimal value, double tolerance, double scale) {
        BigDecimal rounded = value.setScale(decimals(tolerance, scale), RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** Decimals that show a tenth of the tolerance's first digit, while the scale keeps few enough digits. */
    private static int decimals(double tolerance, double scale) {
        int most = SHOWN.getPrecision() - 1 - magnitude(scale);
        return Math.max(0, tolerance == 0.0 ? most : Math.min(most, 1 - magnitude(tolerance)));
    }

    private static int magnitude(double value) {
        return value == 0.0 ? 0 : (int) Math.floor(Math.log10(Math.abs(value)));
    }
}

package curbwatt.engine.quantity;

/** Refusal of impossible values, in one wording: the field, the value found, the range allowed and the unit. */
public final class Require {
    private Require() {}

    /**
     * Returns {@code found} if it lies in the closed range.
     *
     * @param field name of the field as the caller's reader knows it
     * @param found value to be checked; NaN is refused
     * @param least smallest value allowed
     * @param most largest value allowed
     * @param unit unit of all three; empty for a ratio
     * @return {@code found}
     * @throws IllegalArgumentException if the value lies outside
     */
    public static double inside(String field, double found, double least, double most, String unit) {
        if (found >= least && found <= most) {
            return found;
        }
        throw new IllegalArgumentException(
                field + " is " + found + withUnit(unit) + ", allowed is " + least + " to " + most + withUnit(unit));
    }

    /**
     * Returns {@code found} if it is greater than zero and finite.
     *
     * @throws IllegalArgumentException if it is not
     */
    public static double positive(String field, double found, String unit) {
        if (found > 0 && found < Double.POSITIVE_INFINITY) {
            return found;
        }
        throw new IllegalArgumentException(
                field + " is " + found + withUnit(unit) + ", allowed is a finite number above 0" + withUnit(unit));
    }

    /**
     * Returns {@code found} if it is neither infinite nor NaN.
     *
     * @throws IllegalArgumentException if it is not
     */
    public static double finite(String field, double found, String unit) {
        if (Double.isFinite(found)) {
            return found;
        }
        throw new IllegalArgumentException(
                field + " is " + found + withUnit(unit) + ", allowed is a finite number" + withUnit(unit));
    }

    private static String withUnit(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }
}

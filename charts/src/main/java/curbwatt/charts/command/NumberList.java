package curbwatt.charts.command;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Numbers as a user lists them: {@code 11.2,11.4,11.6}, or from, to and step as {@code 11:12.4:0.1}. */
final class NumberList {

    private static final int MOST = 400;

    private NumberList() {}

    /**
     * Reads a list.
     *
     * @param option the option, for messages
     * @param text what the user wrote
     */
    static List<Double> of(String option, String text) {
        try {
            return text.contains(":") ? steps(option, text) : listed(text);
        } catch (NumberFormatException e) {
            throw new InputException(
                    option + " is '" + text + "'; write numbers with commas between them, or FROM:TO:STEP");
        }
    }

    private static List<Double> listed(String text) {
        return Arrays.stream(text.split(",", -1))
                .map(part -> new BigDecimal(part.strip()).doubleValue())
                .toList();
    }

    /** Decimal steps, so that the tenth of ten tenths is 1. */
    private static List<Double> steps(String option, String text) {
        List<BigDecimal> parts = Arrays.stream(text.split(":", -1))
                .map(part -> new BigDecimal(part.strip()))
                .toList();
        if (parts.size() != 3 || parts.get(2).signum() <= 0) {
            throw new NumberFormatException();
        }
        List<Double> values = new ArrayList<>();
        for (BigDecimal value = parts.get(0); value.compareTo(parts.get(1)) <= 0; value = value.add(parts.get(2))) {
            if (values.size() == MOST) {
                throw new InputException(option + " is '" + text + "', more than " + MOST + " numbers");
            }
            values.add(value.doubleValue());
        }
        return values;
    }
}

package curbwatt.engine.numeric;

import java.util.List;

/**
 * A function by its values at points: straight lines between them, and none outside.
 *
 * @param arguments the points, rising, at least two
 * @param values the value at each
 */
public record LinearTable(List<Double> arguments, List<Double> values) {

    /** Refuses too few points, lists of two lengths and points that do not rise. */
    public LinearTable {
        arguments = List.copyOf(arguments);
        values = List.copyOf(values);
        if (arguments.size() < 2 || arguments.size() != values.size()) {
            throw new IllegalArgumentException("table has " + arguments.size() + " arguments and " + values.size()
                    + " values; it needs as many of both, two at least");
        }
        for (int i = 1; i < arguments.size(); i++) {
            if (!(arguments.get(i) > arguments.get(i - 1))) {
                throw new IllegalArgumentException(
                        "arguments must rise: " + arguments.get(i) + " follows " + arguments.get(i - 1));
            }
        }
    }

    /** First argument. */
    public double first() {
        return arguments.get(0);
    }

    /** Last argument. */
    public double last() {
        return arguments.get(arguments.size() - 1);
    }

    /**
     * Value at an argument.
     *
     * @throws IllegalArgumentException if it lies outside the table
     */
    public double at(double argument) {
        if (!(argument >= first() && argument <= last())) {
            throw new IllegalArgumentException(
                    "argument is " + argument + ", the table goes from " + first() + " to " + last());
        }
        int above = 1;
        while (arguments.get(above) < argument) {
            above++;
        }
        double share = (argument - arguments.get(above - 1)) / (arguments.get(above) - arguments.get(above - 1));
        return values.get(above - 1) + share * (values.get(above) - values.get(above - 1));
    }
}

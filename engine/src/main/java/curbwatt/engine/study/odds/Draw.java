package curbwatt.engine.study.odds;

import java.util.List;
import java.util.Objects;

/**
 * One draw and what it came to.
 *
 * @param values of the inputs that vary, in their order
 * @param outcome what it came to
 */
public record Draw(List<Double> values, Outcome outcome) {

    /** Copies the list. */
    public Draw {
        values = List.copyOf(values);
        Objects.requireNonNull(outcome, "outcome");
    }
}

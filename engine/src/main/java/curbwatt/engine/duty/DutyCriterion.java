package curbwatt.engine.duty;

import java.util.Objects;

/**
 * The limit that a figure is held against.
 *
 * @param figure what is looked at
 * @param limit largest value that passes
 * @param unit unit of the limit
 * @param source standard, and where its wording was seen
 * @param obtained how far the limit may be trusted
 */
public record DutyCriterion(String figure, double limit, String unit, String source, Obtained obtained) {

    /** How a limit came to us. */
    public enum Obtained {
        /** Read in the standard, or in a public specification that quotes it. */
        READ,
        /** Recalled, not read again. */
        RECALLED
    }

    /** Refuses missing words. */
    public DutyCriterion {
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(obtained, "obtained");
    }

    /** Whether a found figure is within the limit. */
    public boolean isMetBy(double found) {
        return found <= limit;
    }
}

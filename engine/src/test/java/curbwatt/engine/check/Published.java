package curbwatt.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.TestReporter;

/**
 * A value from outside the project that our computation is held against.
 *
 * <p>Each {@link #check} asserts, and publishes one row to the running test's {@link TestReporter}; the build collects
 * the rows into {@code docs/validation.md}.
 *
 * @param topic heading under which the row is listed, e.g. {@code "Label tests"}
 * @param what the quantity and the conditions, in one line
 * @param unit unit of the value, tolerance and our figure; empty for a ratio
 * @param value the published value
 * @param tolerance largest accepted distance, in {@code unit}
 * @param obtained how the published value came to us
 * @param source publication, standard or data set
 */
public record Published(
        String topic, String what, String unit, double value, double tolerance, Obtained obtained, String source) {

    /** How far a published value may be trusted. */
    public enum Obtained {
        /** Read in the publication. */
        SEEN,
        /** Read, and recomputed from the published formula and parameters. */
        RECALCULATED,
        /** Recalled from memory, not read. */
        MEMORY,
        /** Arithmetic from published facts; a golden value, not a publication. */
        DERIVED,
        /** Custom of the trade, without a published source. */
        PRACTICE
    }

    /** Asserts that {@code ours} lies within the tolerance and publishes the row. */
    public void check(double ours, TestReporter reporter) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("topic", topic);
        row.put("what", what);
        row.put("unit", unit);
        row.put("published", Double.toString(value));
        row.put("ours", Double.toString(ours));
        row.put("tolerance", Double.toString(tolerance));
        row.put("obtained", obtained.name());
        row.put("source", source);
        reporter.publishEntry(row);
        assertThat(ours).as("%s: %s [%s], %s", topic, what, unit, source).isCloseTo(value, within(tolerance));
    }
}

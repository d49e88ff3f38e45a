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
        SEEN("read in the publication"),
        /** Read, and recomputed from the published formula and parameters. */
        RECALCULATED("recomputed from the published formula and parameters"),
        /** Recalled from memory, not read. */
        MEMORY("recalled, not read again; the weakest kind"),
        /** Arithmetic from published facts; a golden value, not a publication. */
        DERIVED("arithmetic from published facts; nobody printed this number"),
        /** Custom of the trade, without a published source. */
        PRACTICE("custom of the trade, without a published source");

        private final String meaning;

        Obtained(String meaning) {
            this.meaning = meaning;
        }

        String meaning() {
            return meaning;
        }
    }

    /** Refuses a value that could not be checked or not be listed. */
    public Published {
        if (topic.isBlank() || what.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException(
                    "topic, what and source are never blank: \"" + topic + "\", \"" + what + "\", \"" + source + "\"");
        }
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value of \"" + what + "\" is " + value + ", not a finite number");
        }
        if (!(tolerance >= 0.0) || Double.isInfinite(tolerance)) {
            throw new IllegalArgumentException(
                    "tolerance of \"" + what + "\" is " + tolerance + ", not zero or a positive finite number");
        }
    }

    /** Asserts that {@code ours} lies within the tolerance and publishes the row. */
    public void check(double ours, TestReporter reporter) {
        reporter.publishEntry(entry(ours));
        assertThat(ours).as("%s: %s [%s], %s", topic, what, unit, source).isCloseTo(value, within(tolerance));
    }

    Map<String, String> entry(double ours) {
        Map<String, String> entry = new LinkedHashMap<>();
        entry.put("topic", topic);
        entry.put("what", what);
        if (!unit.isBlank()) { // JUnit refuses blank values
            entry.put("unit", unit);
        }
        entry.put("published", Double.toString(value));
        entry.put("ours", Double.toString(ours));
        entry.put("tolerance", Double.toString(tolerance));
        entry.put("obtained", obtained.name());
        entry.put("source", source);
        return entry;
    }

    static boolean isEntry(Map<String, String> entry) {
        return entry.containsKey("published") && entry.containsKey("ours") && entry.containsKey("obtained");
    }

    static Published of(Map<String, String> entry) {
        return new Published(
                entry.get("topic"),
                entry.get("what"),
                entry.getOrDefault("unit", ""),
                Double.parseDouble(entry.get("published")),
                Double.parseDouble(entry.get("tolerance")),
                Obtained.valueOf(entry.get("obtained")),
                entry.get("source"));
    }
}

package curbwatt.charts.output;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * An object in a JSON document, its keys in the order in which they were added.
 *
 * <p>A value is a text, a number, a truth, {@code null}, another object or a list of these. A number that is not
 * finite, and an
 * empty {@link OptionalDouble}, become {@code null}.
 */
public final class JsonObject {

    private final Map<String, Object> entries = new LinkedHashMap<>();

    /** Adds an entry. */
    public JsonObject with(String key, Object value) {
        entries.put(key, value);
        return this;
    }

    /** Adds a number that may be missing. */
    public JsonObject with(String key, OptionalDouble value) {
        return with(key, value.isPresent() ? (Object) value.getAsDouble() : null);
    }

    Map<String, Object> entries() {
        return Collections.unmodifiableMap(entries);
    }
}

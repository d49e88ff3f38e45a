package curbwatt.charts.page;

import java.util.Objects;

/**
 * The scenario that a fresh page shows.
 *
 * @param name file name without folder, or {@code demo:NAME}
 * @param text its text
 */
public record FirstScenario(String name, String text) {

    /** Refuses missing parts. */
    public FirstScenario {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(text, "text");
    }
}

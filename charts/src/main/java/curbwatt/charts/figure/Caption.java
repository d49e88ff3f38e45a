package curbwatt.charts.figure;

import java.util.Objects;

/**
 * The words above a picture.
 *
 * @param title what the picture finds, one line
 * @param subtitle what was drawn under which conditions, one line; may be empty
 */
public record Caption(String title, String subtitle) {

    /** Refuses missing words. */
    public Caption {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(subtitle, "subtitle");
    }
}

package curbwatt.scenarios.stock;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A text that is shipped in the jar. */
final class Resource {
    private Resource() {}

    /** Returns the text of {@code curbwatt/stock/NAME}. */
    static String text(String name) {
        try (InputStream in = Resource.class.getResourceAsStream("/curbwatt/stock/" + name)) {
            if (in == null) {
                throw new IllegalStateException("The program is incomplete: curbwatt/stock/" + name + " is missing.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

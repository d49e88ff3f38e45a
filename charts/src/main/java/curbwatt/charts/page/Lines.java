package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.charts.output.JsonText;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicLong;

/** An answer that grows line by line. Writing to a tab that is gone fails, and that is how its work ends. */
final class Lines implements AutoCloseable {

    private static final long PULSE_NS = 500_000_000L;

    private final OutputStream out;
    private final AtomicLong writtenNs = new AtomicLong(System.nanoTime());

    Lines(OutputStream out) {
        this.out = out;
    }

    /** Writes a document as a line, at once. */
    void write(JsonObject line) {
        put(JsonText.onOneLine(line));
    }

    /** Writes an empty line if nothing was written for half a second, to learn whether anybody still listens. */
    void pulse() {
        if (System.nanoTime() - writtenNs.get() > PULSE_NS) {
            put("\n");
        }
    }

    private void put(String text) {
        try {
            out.write(text.getBytes(StandardCharsets.UTF_8));
            out.flush();
            writtenNs.set(System.nanoTime());
        } catch (IOException e) {
            throw new UncheckedIOException("nobody listens any more", e);
        }
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}

package curbwatt.charts.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A file of the page as it goes out. */
final class ShippedFile {

    private static final int TAG_BYTES = 12;

    private final String type;
    private final byte[] body;
    private final String tag;

    /**
     * A file.
     *
     * @param type media type
     * @param body its bytes
     */
    ShippedFile(String type, byte[] body) {
        this.type = type;
        this.body = body.clone();
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(body);
            this.tag = '"' + HexFormat.of().formatHex(digest, 0, TAG_BYTES) + '"';
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Reads {@code curbwatt/NAME} from the jar. */
    static ShippedFile of(String name, String type) {
        try (InputStream stream = ShippedFile.class.getResourceAsStream("/curbwatt/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program is damaged: /curbwatt/" + name + " is missing");
            }
            return new ShippedFile(type, stream.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    /** Answers with the file, or with 304 where the browser has it already. */
    void answer(Visit visit) throws IOException {
        visit.answerHeader("Cache-Control", "no-cache");
        visit.answerHeader("ETag", tag);
        boolean known = visit.header("If-None-Match").filter(tag::equals).isPresent();
        visit.send(known ? 304 : 200, type, known ? new byte[0] : body);
    }
}

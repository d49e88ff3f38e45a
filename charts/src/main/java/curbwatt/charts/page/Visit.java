package curbwatt.charts.page;

import com.sun.net.httpserver.HttpExchange;
import curbwatt.charts.output.JsonObject;
import curbwatt.charts.output.JsonText;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * One question of a browser and the way to answer it.
 *
 * @param exchange the question as the server received it
 */
record Visit(HttpExchange exchange) {

    /** Media type of answers for the page's program. */
    static final String JSON = "application/json; charset=utf-8";

    /** The most that a question may bring (bytes), as for a scenario file. */
    private static final int MOST_BYTES = 4_000_000;

    /** What is asked for, without host and query. */
    String path() {
        return exchange.getRequestURI().getPath();
    }

    String method() {
        return exchange.getRequestMethod();
    }

    Optional<String> header(String name) {
        return Optional.ofNullable(exchange.getRequestHeaders().getFirst(name));
    }

    /** All values of a header, for one that may not come twice. */
    List<String> headers(String name) {
        return exchange.getRequestHeaders().getOrDefault(name, List.of());
    }

    /** A word of the address after the question mark; nothing there needs decoding. */
    Optional<String> word(String name) {
        String query = exchange.getRequestURI().getRawQuery();
        if (query == null) {
            return Optional.empty();
        }
        String head = name + "=";
        return List.of(query.split("&", -1)).stream()
                .filter(pair -> pair.startsWith(head))
                .map(pair -> pair.substring(head.length()))
                .findFirst();
    }

    /**
     * The text that came with the question.
     *
     * @throws RefusedException if it is too long or no UTF-8
     */
    String text() throws IOException {
        byte[] bytes;
        try (InputStream in = exchange.getRequestBody()) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) {
            throw new RefusedException(413, "A scenario has at most 4 MB. Is this the right file?");
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new RefusedException(400, "The text is not UTF-8. Save it as UTF-8; a scenario is a JSON text.");
        }
    }

    /** Answers with a whole body. */
    void send(int status, String type, byte[] body) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", type);
        boolean bare = method().equals("HEAD") || body.length == 0;
        exchange.sendResponseHeaders(status, bare ? -1 : body.length);
        if (!bare) {
            try (OutputStream out = exchange.getResponseBody()) {
                out.write(body);
            }
        }
    }

    /** A JSON document as it is sent. */
    static byte[] spelt(JsonObject body) {
        return JsonText.onOneLine(body).getBytes(StandardCharsets.UTF_8);
    }

    /** Answers with a JSON document. */
    void send(int status, JsonObject body) throws IOException {
        sendJson(status, spelt(body));
    }

    /** Answers with a JSON document that is {@link #spelt} already. */
    void sendJson(int status, byte[] body) throws IOException {
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        send(status, JSON, body);
    }

    /** Answers line by line, for as long as it takes: each line a JSON document of its own. */
    Lines lines() throws IOException {
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        exchange.getResponseHeaders().set("Content-Type", "application/x-ndjson; charset=utf-8");
        exchange.sendResponseHeaders(200, 0);
        return new Lines(exchange.getResponseBody());
    }

    /** Sets a header of the answer. */
    void answerHeader(String name, String value) {
        exchange.getResponseHeaders().set(name, value);
    }
}

package curbwatt.charts.page;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * An answer of the page's server, asked for letter by letter, so that a test can ask what no browser would.
 *
 * @param status its number
 * @param head status line and headers
 * @param body the text
 */
record Asked(int status, String head, String body) {

    private static final int PATIENCE_MS = 30_000;

    /** Asks with these lines, and what follows the empty one. The connection ends with the answer. */
    static Asked raw(URI page, String question) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), page.getPort())) {
            socket.setSoTimeout(PATIENCE_MS);
            OutputStream out = socket.getOutputStream();
            out.write(question.getBytes(StandardCharsets.UTF_8));
            out.flush();
            // lengths of chunks count bytes: a letter for each byte until they are joined
            String text = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            int end = text.indexOf("\r\n\r\n");
            return new Asked(
                    Integer.parseInt(text.substring(9, 12)),
                    text.substring(0, end),
                    new String(unchunked(text, end + 4).getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8));
        }
    }

    /** Asks for a path, with headers that each end with a line break. */
    static Asked get(URI page, String path, String headers) throws IOException {
        return raw(
                page,
                "GET " + path + " HTTP/1.1\r\nHost: " + page.getAuthority() + "\r\nConnection: close\r\n" + headers
                        + "\r\n");
    }

    /** Sends a text to a path as a tab would. */
    static Asked post(URI page, String path, String tab, String text) throws IOException {
        return raw(page, question(page, path, tab, text));
    }

    /** What is written to send a text. */
    static String question(URI page, String path, String tab, String text) {
        return "POST " + path + " HTTP/1.1\r\nHost: " + page.getAuthority()
                + "\r\nConnection: close\r\nContent-Type: application/json\r\nCurbwatt-Tab: " + tab
                + "\r\nContent-Length: " + text.getBytes(StandardCharsets.UTF_8).length + "\r\n\r\n" + text;
    }

    JsonNode json() {
        return new ObjectMapper().readTree(body);
    }

    private static String unchunked(String text, int from) {
        if (!text.substring(0, from).toLowerCase(Locale.ROOT).contains("transfer-encoding: chunked")) {
            return text.substring(from);
        }
        StringBuilder body = new StringBuilder();
        int at = from;
        while (at < text.length()) {
            int lineEnd = text.indexOf("\r\n", at);
            int length = Integer.parseInt(text.substring(at, lineEnd).strip(), 16);
            body.append(text, lineEnd + 2, lineEnd + 2 + length);
            at = lineEnd + 4 + length;
        }
        return body.toString();
    }
}

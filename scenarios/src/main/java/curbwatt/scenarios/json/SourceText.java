package curbwatt.scenarios.json;

import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import curbwatt.scenarios.problem.SourcePosition;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/**
 * A text and where it came from.
 *
 * @param name file name as the user gave it, or {@code demo:NAME}
 * @param text the text, without a byte order mark
 */
public record SourceText(String name, String text) {
    /** Far above any scenario; a file beyond it is something else. */
    private static final long MOST_BYTES = 4_000_000;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** Drops a byte order mark. */
    public SourceText {
        text = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    }

    /**
     * Reads a file.
     *
     * @param remedyIfMissing what to try if there is none
     * @throws ScenarioException if there is none, if it can't be read, or if it is not text
     */
    public static SourceText of(Path file, String remedyIfMissing) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw refused(name, "is a folder, not a file", "Name a scenario file inside it.");
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw refused(
                        name,
                        "has " + Files.size(file) / 1_000_000 + " MB; a scenario has at most 4 MB",
                        "Is this the right file?");
            }
            return new SourceText(name, decoded(name, Files.readAllBytes(file)));
        } catch (NoSuchFileException e) {
            throw refused(name, "does not exist", remedyIfMissing);
        } catch (AccessDeniedException e) {
            throw refused(name, "may not be read", "Check who may read it.");
        } catch (IOException e) {
            throw refused(name, "can't be read", "Check the disk, and whether another program holds it.");
        }
    }

    private static String decoded(String name, byte[] bytes) {
        for (byte b : bytes) {
            if (b == 0) {
                throw refused(name, "is not text but binary data", "A scenario is a JSON text in UTF-8.");
            }
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw refused(name, "is not text in UTF-8", "Save it as UTF-8; a scenario is a JSON text.");
        }
    }

    private static ScenarioException refused(String name, String what, String remedy) {
        return new ScenarioException(List.of(new Problem(
                Problem.Severity.ERROR, new SourcePosition(name, 0, 0, ""), "The file " + what + ".", remedy)));
    }
}

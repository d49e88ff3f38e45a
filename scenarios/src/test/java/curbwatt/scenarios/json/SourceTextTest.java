package curbwatt.scenarios.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curbwatt.scenarios.problem.ScenarioException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceTextTest {
    @TempDir
    Path folder;

    @Test
    void aFolderIsNoFile() {
        assertRefused(folder, "The file is a folder, not a file.");
    }

    @Test
    void aFileThatIsNotThere() {
        assertRefused(folder.resolve("none.json"), "The file does not exist.");
    }

    @Test
    void binaryDataIsNoText() throws IOException {
        assertRefused(
                Files.write(folder.resolve("a.bin"), new byte[] {'{', 0, '}'}),
                "The file is not text but binary data.");
    }

    @Test
    void anotherEncodingIsRefused() throws IOException {
        assertRefused(
                Files.write(folder.resolve("a.json"), "\"Überland\"".getBytes(StandardCharsets.ISO_8859_1)),
                "The file is not text in UTF-8.");
    }

    @Test
    void aFileFarTooLargeIsRefusedUnread() throws IOException {
        assertRefused(
                Files.write(folder.resolve("a.json"), new byte[5_000_000]),
                "The file has 5 MB; a scenario has at most 4 MB.");
    }

    @Test
    void aByteOrderMarkIsPassedOver() throws IOException {
        Path file = Files.writeString(folder.resolve("a.json"), "\uFEFF{}");
        assertThat(SourceText.of(file, "Look elsewhere.").text()).isEqualTo("{}");
    }

    private static void assertRefused(Path file, String message) {
        assertThatThrownBy(() -> SourceText.of(file, "Look elsewhere."))
                .isInstanceOfSatisfying(ScenarioException.class, e -> {
                    assertThat(e.problems()).hasSize(1);
                    assertThat(e.problems().get(0).message()).isEqualTo(message);
                    assertThat(e.problems().get(0).position().file()).isEqualTo(file.toString());
                    assertThat(e.problems().get(0).remedy()).isNotBlank();
                });
    }
}

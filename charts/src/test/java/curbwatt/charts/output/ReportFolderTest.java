package curbwatt.charts.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFolderTest {

    private static final Map<String, byte[]> FILES =
            Map.of("result.json", text("{}"), "report.html", text("<p>"), "charts/voltage.svg", text("<svg/>"));

    @TempDir
    private Path folder;

    @Test
    void makesTheFolderAndThoseAboveIt() throws IOException {
        Path target = folder.resolve("a/b/run");
        ReportFolder.ofReport(target).write(FILES);
        assertThat(target.resolve("charts/voltage.svg")).hasContent("<svg/>");
        assertThat(names(target.getParent())).containsExactly("run");
    }

    @Test
    void replacesAReportWhole() throws IOException {
        Path target = folder.resolve("run");
        ReportFolder.ofReport(target).write(FILES);
        ReportFolder.ofReport(target).write(Map.of("result.json", text("{\"new\":1}")));
        assertThat(names(target)).containsExactly("result.json");
        assertThat(names(folder)).containsExactly("run");
    }

    @Test
    void takesAnEmptyFolder() throws IOException {
        ReportFolder.ofReport(folder).write(FILES);
        assertThat(folder.resolve("result.json")).exists();
    }

    @Test
    void leavesForeignFilesAlone() throws IOException {
        ReportFolder.ofReport(folder).write(FILES);
        Files.writeString(folder.resolve("notes.txt"), "mine");
        assertThatThrownBy(() -> ReportFolder.ofReport(folder).write(FILES))
                .isInstanceOf(FolderRefusedException.class)
                .hasMessageContaining("notes.txt");
        assertThat(folder.resolve("notes.txt")).hasContent("mine");
    }

    @Test
    void doesNotTakeAFolderForAReportThatLacksItsMark() throws IOException {
        Files.writeString(folder.resolve("report.html"), "someone else's");
        assertThatThrownBy(() -> ReportFolder.ofReport(folder).check())
                .isInstanceOf(FolderRefusedException.class)
                .hasMessageContaining("result.json");
    }

    @Test
    void refusesAFileInTheWay() throws IOException {
        Path file = Files.writeString(folder.resolve("run"), "x");
        assertThatThrownBy(() -> ReportFolder.ofReport(file).check()).isInstanceOf(FolderRefusedException.class);
        assertThatThrownBy(() -> ReportFolder.ofReport(file.resolve("below")).check())
                .isInstanceOf(FolderRefusedException.class);
    }

    private static List<String> names(Path path) throws IOException {
        try (Stream<Path> list = Files.list(path)) {
            return list.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

package curbwatt.charts.report;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.SampleRun;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReportFilesTest {

    @Test
    void theSameScenarioGivesTheSameBytes() {
        SortedMap<String, byte[]> once = ReportFiles.of(SampleRun.CUT_OFF_EARLY.again());
        SortedMap<String, byte[]> twice = ReportFiles.of(SampleRun.CUT_OFF_EARLY.again());
        assertThat(once.keySet()).isEqualTo(twice.keySet()).contains("report.html", "result.json", "trace.csv");
        once.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(twice.get(name)));
    }

    @Test
    void aPictureDrawnBesideChangesNothing() {
        SortedMap<String, byte[]> alone = ReportFiles.of(SampleRun.HOLDS.story());
        ReportFiles.prepare();
        ReportFiles.of(SampleRun.HOLDS.story())
                .forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(alone.get(name)));
    }

    @Test
    void eachPictureIsThereAsDrawingAndAsImage() {
        SortedMap<String, byte[]> files = ReportFiles.of(SampleRun.HOLDS.story());
        assertThat(files.keySet())
                .contains("charts/voltage.svg", "charts/voltage.png")
                .filteredOn(name -> name.endsWith(".svg"))
                .allSatisfy(name -> assertThat(files).containsKey(name.replace(".svg", ".png")));
    }

    @ParameterizedTest
    @EnumSource
    void thePageIsWholeAndFetchesNothing(SampleRun run) {
        String page = page(run);
        assertThat(page)
                .startsWith("<!DOCTYPE html>")
                .endsWith("</html>\n")
                .doesNotContain("{{")
                .doesNotContain("Infinity");
        assertThat(page).doesNotContain("<script").doesNotContain("<link").doesNotContain("@import");
        assertThat(Pattern.compile("(?:src|href)=\"(?!#)([^\"]*)")
                        .matcher(page)
                        .results()
                        .map(m -> m.group(1)))
                .containsOnly("result.json", "trace.csv", "charts/");
        assertThat(Pattern.compile("url\\((?!data:|#|&quot;#|\"#)")
                        .matcher(page)
                        .find())
                .isFalse();
    }

    @Test
    void theAnswerComesFirst() {
        String page = page(SampleRun.CUT_OFF_EARLY);
        int answer = page.indexOf("<h1 class=\"no\">Cut off too early:");
        assertThat(answer).isPositive();
        assertThat(page.indexOf("<svg")).isGreaterThan(answer);
        assertThat(page.indexOf("id=\"phases\"")).isGreaterThan(page.indexOf("<svg"));
        assertThat(page).contains("not met</b>", ">met</b>");
    }

    @Test
    void namesFromTheFileAreEscaped() {
        assertThat(page(SampleRun.HOLDS))
                .contains("Causeway Authority &amp; its crew")
                .doesNotContain("Authority & its");
    }

    private static String page(SampleRun run) {
        return new String(ReportFiles.of(run.story()).get("report.html"), StandardCharsets.UTF_8);
    }
}

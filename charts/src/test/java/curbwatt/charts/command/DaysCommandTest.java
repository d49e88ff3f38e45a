package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DaysCommandTest {

    @TempDir
    private Path folder;

    @Test
    void theAnswerComesFirst() {
        Said said = Said.by("days", "demo:winter-shifts");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .startsWith("It is held up by the cutoff alone: the engine starts on all 90 days, but on ")
                .contains("90 days of a pattern of 7 days", "lowest", "full discharges", "by cycling alone", "trips");
    }

    @Test
    void pictureAndFiguresAreTheSameBytesTwice() throws IOException {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        assertThat(Said.by("days", "demo:winter-shifts", "--days", "28", "--out", one.toString())
                        .exitCode())
                .isZero();
        Said.by("days", "demo:winter-shifts", "--days", "28", "--out", two.toString());
        for (String name : new String[] {
            "report.html",
            "days.json",
            "charts/days.svg",
            "charts/days.png",
            "charts/day-charge.svg",
            "charts/day-charge.png"
        }) {
            assertThat(Files.readAllBytes(one.resolve(name))).as(name).isEqualTo(Files.readAllBytes(two.resolve(name)));
        }
        assertThat(Files.readString(one.resolve("charts/days.svg"))).contains("State of charge");
    }

    @Test
    void theReportAnswersFirstAndFetchesNothing() throws IOException {
        Path out = folder.resolve("report");
        Said.by("days", "demo:winter-shifts", "--days", "35", "--out", out.toString());
        String page = Files.readString(out.resolve("report.html"));
        int answer = page.indexOf("<h1 class=\"\">It is held up by the cutoff alone");
        assertThat(answer).isPositive();
        assertThat(page.indexOf("<svg")).isGreaterThan(answer);
        // the typeface in the head is long enough to hold any three letters
        assertThat(page.substring(page.indexOf("</style>")))
                .contains("Life by cycling alone", "Cycles by depth", "Day by day", "Cautions", "href=\"days.json\"")
                .contains("Equipment cutoff&#39; opens first on day 2, ")
                .doesNotContain("{{", "<script", "trace.csv", "Infinity", "NaN", ", between");
        assertThat(page.split("<td>Shift</td>", -1)).hasSize(26);
    }

    @Test
    void aLongRosterIsToldByTheWeek() throws IOException {
        Path out = folder.resolve("weeks");
        Said.by("days", "demo:winter-shifts", "--days", "84", "--out", out.toString());
        assertThat(Files.readString(out.resolve("report.html")))
                .contains("Week by week", ">78 to 84</th>")
                .doesNotContain("Day by day");
    }

    @Test
    void jsonTellsEveryDay() {
        Said said = Said.by("days", "demo:winter-shifts", "--days", "14", "--json");
        assertThat(said.out())
                .contains("\"course\": \"too short\"", "\"day\": 14", "\"plan\": \"Weekend\"", "\"cyclesByDepth\"")
                .doesNotContain("\"day\": 15");
    }

    @Test
    void aScenarioWithoutRosterIsRefused() {
        Said said = Said.by("days", "demo:lane-watch");
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("demo:lane-watch has no scene.roster");
        assertThat(Said.by("days", "demo:winter-shifts", "--days", "0").err())
                .contains("--days is 0; allowed is 1 to 3660");
    }
}

package curbwatt.charts.report;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.IdleStory;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.idle.IdleWay;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;

class IdleReportTest {

    private static final ReadyScenario READY = Closure.ready();

    private static IdleStory story(IdlePlan plan, int threads) {
        return IdleStory.run(READY, plan, new RunPool(threads), StudyWatch.none());
    }

    @Test
    void theSameBytesWhateverTheNumberOfThreads() {
        SortedMap<String, byte[]> one =
                IdleReport.of(story(READY.studies().idle(), 1)).files();
        SortedMap<String, byte[]> three =
                IdleReport.of(story(READY.studies().idle(), 3)).files();
        assertThat(one.keySet())
                .isEqualTo(three.keySet())
                .contains(
                        "report.html",
                        "result.json",
                        "charts/trajectories.png",
                        "charts/hours.svg",
                        "charts/break-even.svg");
        one.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(three.get(name)));
        String page = new String(one.get("report.html"), StandardCharsets.UTF_8);
        assertThat(page)
                .contains(
                        "Why not the engine off?",
                        "One scene in four ways",
                        "A year of 120 such scenes",
                        "When a device pays",
                        "The vehicle has no automatic start; a usual one was taken",
                        "marks")
                .doesNotContain("Infinity", "NaN", "{{", "Where charge and energy went");
        assertThat(new String(one.get("result.json"), StandardCharsets.UTF_8))
                .contains("\"study\": \"idle\"", "\"measure\": \"money\"", "\"lever\": \"scenes per year\"");
    }

    /** The story: the battery alone gives up within the hour; a device beats plain idling, dearest fuel or not. */
    @Test
    void theSentencesSayWhatTheFiguresSay() {
        IdleStory story = story(READY.studies().idle(), 2);
        StudyReport report = IdleReport.of(story);
        IdleWay best = story.result().base().bestWay().orElseThrow();
        assertThat(best).isEqualTo(IdleWay.AUTOMATIC_START);
        assertThat(report.headline())
                .startsWith(
                        "Switch the engine off, and let an automatic start look after the battery: of the ways that hold")
                .contains("marks a year");
        assertThat(report.reasons())
                .anyMatch(reason -> reason.startsWith("Why not the engine off? Holds 5"))
                .anyMatch(reason -> reason.startsWith("The answer changes below ") && reason.contains("scenes a year"));
    }

    @Test
    void withoutPricesNoMoneyIsSpokenOf() {
        StudyReport report = IdleReport.of(story(IdlePlan.usual(), 2));
        assertThat(report.headline()).contains("L of fuel a scene");
        assertThat(report.files().keySet()).doesNotContain("charts/break-even.svg");
        assertThat(report.json()).contains("\"prices\": null", "\"moneyPerYear\": null");
        assertThat(report.doubts()).anyMatch(doubt -> doubt.contains("--fuel-price"));
    }
}

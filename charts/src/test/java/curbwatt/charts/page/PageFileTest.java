package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.wording.Headline;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** What the page makes of a file that is opened, changed by its knobs, and saved, in a real browser. */
class PageFileTest {

    private static final String TRIP = "knob-vehicle-cutoffs-0-tripV";
    private static final String LANE_WATCH = DemoScenarios.text("lane-watch");
    private static final Scenarios SCENARIOS = new Scenarios();
    private static Browser browser;

    @BeforeAll
    static void open() throws IOException {
        browser = Browser.open(1400, 1700);
    }

    @AfterAll
    static void close() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void afresh() {
        browser.visit();
    }

    @AfterEach
    void nothingWasComplainedOf() {
        assertThat(browser.complaints()).isEmpty();
    }

    private static void opens(Path folder, String text) throws IOException {
        Path own = Files.writeString(folder.resolve("truck.json"), text);
        long before = browser.runs();
        browser.the("file").sendKeys(own.toString());
        browser.awaitRun(before);
    }

    /** The text that would be saved. */
    private static String text() {
        browser.the("tab-file").click();
        return browser.the("text").getDomProperty("value");
    }

    /** The verdict of the engine on a text. */
    private static String verdict(String text) {
        Watch watch = Watch.over(new TabWork().begin("test", Optional.empty()), 60, () -> {});
        return new Headline(new PageRun().story(SCENARIOS.read("scenario", text), 600, watch)).sentence();
    }

    private static String shown() {
        return browser.text("verdict").replace('\u00a0', ' ');
    }

    @Test
    void anOpenedFileKeepsItsCommentsWhenSomethingIsChanged(@TempDir Path folder) throws IOException {
        opens(folder, LANE_WATCH);
        assertThat(text()).isEqualTo(LANE_WATCH);
        browser.the("tab-scene").click();
        browser.turn(TRIP, 11.9);
        assertThat(text()).isEqualTo(LANE_WATCH.replace("\"tripV\": 12.2", "\"tripV\": 11.9"));
        assertThat(browser.text("file-note")).contains("with what was changed here");
    }

    @Test
    void commentsInsideWhatWasMadeAnewAreToldOf(@TempDir Path folder) throws IOException {
        opens(folder, LANE_WATCH.replace("\"phases\": [", "\"phases\": [ // a quiet night"));
        browser.nudge("scrub", 25 * 60);
        long before = browser.runs();
        browser.driver()
                .findElement(By.cssSelector("[aria-label=\"Switch off Corner heads from here on\"]"))
                .click();
        browser.awaitRun(before);
        String text = text();
        assertThat(text).contains("// One battery for everything").doesNotContain("a quiet night");
        assertThat(verdict(text)).isEqualTo(shown());
        assertThat(browser.text("file-note"))
                .contains("of the file that was opened")
                .contains("not kept");
    }

    @Test
    void aKeyThatComesOrGoesLeavesTheCommentsBesideIt(@TempDir Path folder) throws IOException {
        String commented = LANE_WATCH.replace(
                "\"trace\": { \"spacingS\": 5 }", "\"trace\": { /* fine */ \"spacingS\": 5 } // as asked");
        opens(folder, commented);
        browser.turn("knob-vehicle-cutoffs-0-filterS", 3);
        assertThat(text()).contains("\"filterS\": 3").contains("/* fine */").contains("// as asked");
        assertThat(browser.text("file-note")).contains("with what was changed here");
        assertThat(verdict(text())).isEqualTo(shown());
    }

    @Test
    void whatIsSavedIsAScenarioOfTheSameVerdict() {
        browser.turn(TRIP, 11.9);
        String text = text();
        assertThat(verdict(text)).isEqualTo(shown());
        assertThat(text).contains("\"tripV\": 11.9").contains("\n  \"vehicle\": {");
    }
}

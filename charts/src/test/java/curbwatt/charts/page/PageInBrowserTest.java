package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.ScenarioRunner;
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
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page as a planner and a trainer use it, in a real browser. */
class PageInBrowserTest {

    private static final String TRIP = "knob-vehicle-cutoffs-0-tripV";
    private static final String LANE_WATCH = DemoScenarios.text("lane-watch");
    private static final Scenarios SCENARIOS = new Scenarios();
    private static Browser browser;
    private static String usual;

    @BeforeAll
    static void open() throws IOException {
        browser = Browser.open(1400, 1700);
        usual = verdict(LANE_WATCH);
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

    /** The verdict of the engine on a text. */
    private static String verdict(String text) {
        Watch watch = Watch.over(new TabWork().begin("test", Optional.empty()), 60, () -> {});
        return new Headline(new PageRun().story(SCENARIOS.read("scenario", text), 600, watch)).sentence();
    }

    private static String shown() {
        return browser.text("verdict").replace('\u00a0', ' ');
    }

    private static String withTrip(String tripV) {
        return LANE_WATCH.replace("\"tripV\": 12.2", "\"tripV\": " + tripV);
    }

    @Test
    void itOpensOnADemoWithTheVerdictOfTheCommandLine() {
        String ofTheCommand =
                new Headline(new ScenarioRunner(SCENARIOS.demo("lane-watch")).run(share -> {})).sentence();
        assertThat(shown()).isEqualTo(ofTheCommand).startsWith("Cut off too early");
        assertThat(browser.the("timeline").findElements(By.cssSelector("path.voltage-line")))
                .hasSize(1);
    }

    @Test
    void aTurnedKnobShowsTheTripThatTheEngineGives() {
        browser.turn(TRIP, 12.25);
        assertThat(shown()).isEqualTo(verdict(withTrip("12.25"))).isNotEqualTo(usual);
        browser.turn(TRIP, 11.6);
        assertThat(shown()).isEqualTo(verdict(withTrip("11.6"))).startsWith("Holds all 1 h 15 min");
        assertThat(browser.the(TRIP + "-number").getDomProperty("value")).isEqualTo("11.6");
    }

    @Test
    void theLastOfManyTurnsWins() {
        long before = browser.runs();
        for (int i = 0; i < 20; i++) {
            browser.nudge(TRIP, 11.2 + 0.05 * i);
        }
        browser.nudge(TRIP, 12.3);
        browser.awaitRun(before);
        assertThat(shown()).isEqualTo(verdict(withTrip("12.3")));
    }

    @Test
    void aKnobTurnsWithTheKeysAlone() {
        WebElement knob = browser.the(TRIP);
        long before = browser.runs();
        knob.sendKeys(Keys.ARROW_RIGHT);
        browser.awaitRun(before);
        assertThat(shown()).isEqualTo(verdict(withTrip("12.25")));
    }

    @Test
    void aFigureThatCantBeIsToldAtItsField() {
        browser.nudge(TRIP + "-number", 122);
        browser.await("return document.querySelector('#" + TRIP + "-number-message') !== null");
        assertThat(browser.text(TRIP + "-number-message")).contains("122").contains("14");
        assertThat(browser.the(TRIP + "-number").getDomAttribute("aria-invalid"))
                .isEqualTo("true");
        browser.turn(TRIP + "-number", 12.2);
        assertThat(browser.the(TRIP + "-number").getDomAttribute("aria-invalid"))
                .isNull();
    }

    @Test
    void aLoadThatIsSwitchedOffIsOffInTheEngineToo() {
        long before = browser.runs();
        browser.the("switch-c2").click();
        browser.awaitRun(before);
        assertThat(shown()).isNotEqualTo(usual);
        assertThat((String) browser.script("return document.getElementById('lamps').textContent"))
                .contains("Arrow");
        before = browser.runs();
        browser.the("switch-c2").click();
        browser.awaitRun(before);
        assertThat(shown()).isEqualTo(usual);
    }

    @Test
    void theScenePlaysTheLampsFollowAndGoDarkAtTheTrip() {
        browser.script("document.getElementById('speed').value = '600'");
        browser.the("play").click();
        browser.await("return Number(document.getElementById('scrub').value) > 30 * 60");
        assertThat(browser.text("now")).startsWith("Watch:");
        browser.await("return document.getElementById('lamps').textContent.includes('no supply')");
        browser.the("play").click();
        double timeS = Double.parseDouble(browser.the("scrub").getDomProperty("value"));
        assertThat(timeS).isBetween(43 * 60.0, 75 * 60.0);
        browser.nudge("scrub", 45 * 60);
        assertThat(browser.text("now")).contains("'Equipment cutoff' opens");
        browser.nudge("scrub", 20 * 60);
        assertThat(browser.text("clock")).isEqualTo("0:20:00");
        assertThat(browser.text("lamps")).doesNotContain("no supply").contains("flashing");
    }

    @Test
    void whatIsSwitchedOffFromAnInstantOnChangesTheRestAndKeepsTheRunBefore() {
        browser.nudge("scrub", 25 * 60);
        long before = browser.runs();
        browser.driver()
                .findElement(By.cssSelector("[aria-label=\"Switch off Corner heads from here on\"]"))
                .click();
        browser.awaitRun(before);
        assertThat(shown()).isNotEqualTo(usual);
        assertThat(browser.text("ghosts").replace('\u00a0', ' ')).contains("opens after 43 min");
        assertThat(browser.text("knob-groups")).contains("Watch, Corner heads off");
    }

    private static void fillTheMap(double fromV) {
        browser.the("tab-map").click();
        browser.script(
                "document.getElementById('map-from').value = arguments[0]; document.getElementById('map-to').value = arguments[0] + 0.1;"
                        + "document.getElementById('map-step').value = 0.1",
                fromV);
        browser.the("map-fill").click();
        browser.await("return document.querySelectorAll('#map-grid .cell').length === 14"
                + " && document.querySelectorAll('#map-grid .cell.empty').length === 0");
    }

    @Test
    void theMapFillsAndASquareShowsItsRun() {
        fillTheMap(11.6);
        browser.the("map-stop").click();
        long before = browser.runs();
        browser.script("document.querySelector('#map-grid [data-trip=\"11.6\"][data-delay=\"60\"]').click()");
        browser.awaitRun(before);
        assertThat(shown()).isEqualTo(verdict(withTrip("11.6").replace("\"tripDelayS\": 5", "\"tripDelayS\": 60")));
        assertThat(browser.the("view-scene").isDisplayed()).isTrue();
    }

    @Test
    void theMapFramesTheSettingsAsTheyAreAndStopsWhenAsked() {
        fillTheMap(12.2);
        assertThat(browser.driver().findElements(By.cssSelector("#map-grid .cell.here")))
                .singleElement()
                .satisfies(cell -> assertThat(cell.getDomAttribute("data-trip")).isEqualTo("12.2"))
                .satisfies(
                        cell -> assertThat(cell.getDomAttribute("data-delay")).isEqualTo("5"))
                .satisfies(cell -> assertThat(cell.getText()).isEqualTo("43 min"));
        browser.the("map-stop").click();
        browser.await("return document.getElementById('map-note').textContent.startsWith('Stopped')");
    }

    @Test
    void aFigureOfTheBudgetRunsTheSceneAnew() {
        browser.the("tab-loads").click();
        browser.turn("budget-ratedCurrentA0", 20);
        assertThat(shown())
                .isEqualTo(verdict(LANE_WATCH.replace(
                        "\"part\": \"light-bar-led\",", "\"part\": \"light-bar-led\", \"ratedCurrentA\": 20,")));
    }

    @Test
    void aBrokenFileIsToldAndAMendedOneRuns(@TempDir Path folder) throws IOException {
        Path broken = folder.resolve("truck.json");
        Files.writeString(broken, LANE_WATCH.replace("\"tripV\": 12.2,", "\"tripV\": 12.2, \"tripDelay\": 5,"));
        browser.the("file").sendKeys(broken.toString());
        browser.await("return document.querySelectorAll('#file-problems li').length > 0");
        assertThat(browser.text("file-problems"))
                .contains("tripDelay")
                .contains("line ")
                .contains("vehicle.cutoffs[0]");
        assertThat(browser.text("file-note")).contains("truck.json");
        assertThat(shown()).isEqualTo(usual);
        Files.writeString(broken, withTrip("12.3"));
        long before = browser.runs();
        browser.the("file").sendKeys(broken.toString());
        browser.awaitRun(before);
        assertThat(shown()).isEqualTo(verdict(withTrip("12.3")));
    }

    @Test
    void aReloadKeepsTheState() {
        browser.turn(TRIP, 11.9);
        browser.the("pin").click();
        browser.the("tab-loads").click();
        String before = shown();
        browser.driver().navigate().refresh();
        browser.awaitRun(0);
        assertThat(shown()).isEqualTo(before);
        assertThat(browser.the("view-loads").isDisplayed()).isTrue();
        assertThat(browser.the(TRIP).getDomProperty("value")).isEqualTo("11.9");
        assertThat((long) browser.script("return document.querySelectorAll('#ghosts li').length"))
                .isEqualTo(1);
    }

    @Test
    void aLinkCarriesTheWholeScenario() {
        browser.turn(TRIP, 11.9);
        String before = shown();
        browser.the("share").click();
        browser.await("return document.getElementById('link').value.includes('#scene=')");
        String link = browser.the("link").getDomProperty("value");
        browser.visit();
        browser.driver().get("about:blank");
        browser.driver().get(link);
        browser.awaitRun(0);
        assertThat(shown()).isEqualTo(before);
        assertThat((String) browser.script("return location.hash")).isEmpty();
    }
}

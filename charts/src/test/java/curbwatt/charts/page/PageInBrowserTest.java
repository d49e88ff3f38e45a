package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.ScenarioRunner;
import curbwatt.charts.wording.Headline;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The page as a planner uses it, in a real browser. */
class PageInBrowserTest {

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

    private static String verdict(String text) {
        return new Headline(new ScenarioRunner(new Scenarios().read("scenario", text)).run(share -> {})).sentence();
    }

    @Test
    void itOpensOnADemoWithTheVerdictOfTheCommandLine() {
        assertThat(browser.text("verdict")).isEqualTo(verdict(DemoScenarios.text("lane-watch")));
        assertThat(browser.text("verdict")).startsWith("Cut off too early");
    }
}

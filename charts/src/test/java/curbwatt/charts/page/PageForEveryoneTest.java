package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page for people who hear it, use its keys alone, have a narrow screen, or want no flashing. */
class PageForEveryoneTest {

    private static final List<String> VIEWS = List.of("scene", "map", "loads", "file");

    private static Browser browser;

    @BeforeAll
    static void open() throws IOException {
        browser = Browser.open(1400, 1000);
    }

    @AfterAll
    static void close() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    /** By the rules of axe-core for WCAG 2.1, levels A and AA. */
    @ParameterizedTest
    @CsvSource({"1400, light", "1400, dark", "360, light"})
    void nothingSeriousStandsInAnyonesWay(int width, String colours) throws IOException {
        browser.prefer("prefers-color-scheme", colours);
        browser.narrowTo(width, 900);
        browser.visit();
        browser.injectOutsideThePolicy(axe());
        for (String view : VIEWS) {
            browser.the("tab-" + view).click();
            assertThat(found()).as(view + ", " + width + " px, " + colours).isEmpty();
            assertThat((boolean) browser.script(
                            "return document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                    .as(view + " fits into " + width + " px")
                    .isTrue();
        }
    }

    @SuppressWarnings("unchecked")
    private static List<String> found() {
        List<Map<String, Object>> violations = (List<Map<String, Object>>) browser.driver()
                .executeAsyncScript("const done = arguments[0];"
                        + "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', "
                        + "'wcag21a', 'wcag21aa']}).then((result) => done("
                        + "result.violations.map((v) => ({id: v.id, impact: v.impact,"
                        + "where: v.nodes.slice(0, 4).map((n) "
                        + "=> n.target.join(' ') + ': ' + n.failureSummary).join(' | ')}))))");
        return violations.stream()
                .filter(violation -> List.of("serious", "critical").contains(violation.get("impact")))
                .map(violation -> violation.get("id") + ": " + violation.get("where"))
                .toList();
    }

    private static String axe() throws IOException {
        try (InputStream in = PageForEveryoneTest.class.getResourceAsStream(
                "/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void lampsStandStillWhereLessMovementIsWanted() {
        browser.prefer("prefers-reduced-motion", "reduce");
        browser.visit();
        assertThat(browser.the("flash").isSelected()).isFalse();
        browser.script("document.getElementById('speed').value = '600'");
        browser.the("play").click();
        browser.await("return document.getElementById('lamps').textContent.includes('flashing')");
        for (int i = 0; i < 20; i++) {
            assertThat((long) browser.script("return document.querySelectorAll('.lamp.dark').length"))
                    .isZero();
        }
        browser.prefer();
        browser.visit();
        assertThat(browser.the("flash").isSelected()).isTrue();
    }

    @Test
    void noLampFlashesMoreThanThreeTimesInAnySecond() {
        browser.visit();
        // WCAG 2.2, success criterion 2.3.1: at most three flashes in any one second, or a small area
        for (String rhythm : List.of(
                "{everyS: 0.5, laterS: 0, onS: [[0, 0.07], [0.13, 0.2]], share: 0.28}",
                "{everyS: 0.7, laterS: 0.1, onS: [[0, 0.08], [0.14, 0.22], [0.35, 0.43], [0.49, 0.57]], share: 0.46}",
                "{everyS: 0.25, laterS: 0, onS: [[0, 0.1]], share: 0.4}",
                "{everyS: 0.05, laterS: 0, onS: [[0, 0.01]], share: 0.2}",
                "{everyS: 1, laterS: 0, onS: [[0, 0.5]], share: 0.5}")) {
            Object most = browser.driver()
                    .executeAsyncScript(
                            "const done = arguments[0]; import('/lamps.js').then(({isLit}) => {"
                                    + "const rhythm = " + rhythm + "; const starts = []; let lit = false;"
                                    + "for (let t = 0; t < 20; t += 0.001) { const now = isLit(rhythm, t);"
                                    + "if (now && !lit) starts.push(t); lit = now; }"
                                    + "done(Math.max(...starts.map((t) => starts.filter((u) => u >= t && u < t + 0.999).length))); })");
            assertThat(((Number) most).intValue()).as(rhythm).isBetween(1, 3);
        }
        double litPx = ((Number) browser.script("return [...document.querySelectorAll('.lamp')].reduce("
                        + "(sum, lamp) => sum + lamp.clientWidth * lamp.clientHeight, 0)"))
                .doubleValue();
        // a quarter of 341 × 256 px, the small area of the same criterion
        assertThat(litPx).isPositive().isLessThan(0.25 * 341 * 256);
    }
}

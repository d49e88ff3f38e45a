package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.output.JsonText;
import curbwatt.charts.run.RunStory;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Measures how long a turn of a knob takes, from the hand to the picture, in a real browser, and what of that each part of
 * the way takes. Prints the middle and the 95th percentile as rows of a table. No build runs it, since its name is not one of a
 * test; {@code .ci/measure-page} does.
 */
class PageTurns {

    /** As many as the command {@code page} runs before anybody asks. */
    private static final int WARM = 240;

    private static final int TURNS = 40;

    /** Turns the trip level and waits each time until what came of it is on the screen. */
    private static final String TURN = """
            const [value, done] = arguments;
            const root = document.documentElement;
            const knob = document.getElementById('knob-vehicle-cutoffs-0-tripV');
            const drawn = new MutationObserver(() => {
              drawn.disconnect();
              const atMs = performance.now();
              const question = performance.getEntriesByType('resource').filter((each) => each.name.endsWith('/run')).at(-1);
              const parts = question.serverTiming.map((part) => [part.name, part.duration]);
              requestAnimationFrame(() => setTimeout(() => done([
                ['"lane watch", from the hand to the screen', performance.now() - startMs],
                ['from the hand to the question', question.startTime - startMs],
                ['from the question to its answer', question.responseEnd - question.startTime],
                ...parts.map(([name, ms]) => ['of that, the server: ' + name, ms]),
                ['of that, outside these parts', question.responseEnd - question.startTime - parts.reduce((sum, part) => sum + part[1], 0)],
                ['from the answer to the picture', atMs - question.responseEnd],
                ['from the picture to the screen', performance.now() - atMs],
              ])));
            });
            drawn.observe(root, { attributeFilter: ['data-runs'] });
            performance.clearResourceTimings();
            const startMs = performance.now();
            knob.value = value;
            knob.dispatchEvent(new Event('input', { bubbles: true }));
            """;

    @Test
    void ofTheTripLevelOfLaneWatch() throws IOException {
        try (Browser browser = Browser.open(1400, 1000)) {
            browser.visit();
            browser.driver().manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
            Map<String, List<Double>> partsMs = new LinkedHashMap<>();
            for (int i = 0; i < WARM + TURNS; i++) {
                List<?> took = (List<?>) browser.driver().executeAsyncScript(TURN, tripV(i));
                if (i >= WARM) {
                    took.stream()
                            .map(part -> (List<?>) part)
                            .forEach(part -> partsMs.computeIfAbsent((String) part.get(0), name -> new ArrayList<>())
                                    .add(((Number) part.get(1)).doubleValue()));
                }
            }
            assertThat(browser.complaints()).isEmpty();
            partsMs.forEach(PageTurns::print);
        }
    }

    @Test
    void partsOfAnAnswer() {
        Scenarios scenarios = new Scenarios();
        for (String name : List.of("lane-watch", "two-batteries")) {
            String title = "\"" + name.replace('-', ' ') + "\"";
            String asWritten = DemoScenarios.text(name);
            PageRun runs = new PageRun();
            List<Double> readMs = new ArrayList<>();
            List<Double> runMs = new ArrayList<>();
            List<Double> spellMs = new ArrayList<>();
            for (int i = 0; i < WARM + TURNS; i++) {
                String text = asWritten.replaceFirst("\"tripV\": [0-9.]+", "\"tripV\": " + tripV(i));
                Watch watch = Watch.over(new TabWork().begin("run", Optional.empty()), 60, () -> {});
                long startNs = System.nanoTime();
                ReadyScenario scenario = scenarios.read("scenario", text);
                long readNs = System.nanoTime();
                RunStory story = runs.story(scenario, 600, watch);
                long ranNs = System.nanoTime();
                assertThat(JsonText.onOneLine(RunJson.of(story))).isNotEmpty();
                if (i >= WARM) {
                    readMs.add((readNs - startNs) / 1e6);
                    runMs.add((ranNs - readNs) / 1e6);
                    spellMs.add((System.nanoTime() - ranNs) / 1e6);
                }
            }
            print(title + ", no browser: read", readMs);
            print(title + ", no browser: run", runMs);
            print(title + ", no browser: spell", spellMs);
        }
    }

    /** The turns of a hand over the trip level, up and up again: each keeps the lamps lit for another while. */
    private static double tripV(int turn) {
        return 11.2 + 0.05 * (turn % 16);
    }

    private static void print(String what, List<Double> valuesMs) {
        List<Double> sorted = valuesMs.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT, "| %s | %.1f ms | %.1f ms |%n", what, sorted.get(sorted.size() / 2), sorted.get((int)
                        (0.95 * sorted.size())));
    }
}

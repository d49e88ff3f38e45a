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

    private static final int TURNS = 200;

    private static final String TRIP_LEVEL = "\"tripV\": ";

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
    void withoutABrowserInAllDemos() {
        for (String name : DemoScenarios.names()) {
            if (DemoScenarios.text(name).contains(TRIP_LEVEL)) {
                Map<String, List<Double>> partsMs = turnWithoutBrowser(name);
                System.out.printf(
                        Locale.ROOT,
                        "| demo:%s | %.1f ms | %.1f ms | %.1f ms | %.1f ms | %.1f ms |%n",
                        name,
                        percentile(partsMs.get("read"), 0.5),
                        percentile(partsMs.get("run"), 0.5),
                        percentile(partsMs.get("spell"), 0.5),
                        percentile(partsMs.get("all"), 0.5),
                        percentile(partsMs.get("all"), 0.95));
            }
        }
    }

    private static Map<String, List<Double>> turnWithoutBrowser(String name) {
        Scenarios scenarios = new Scenarios();
        PageRun runs = new PageRun();
        Map<String, List<Double>> partsMs = new LinkedHashMap<>();
        for (String part : List.of("read", "run", "spell", "all")) {
            partsMs.put(part, new ArrayList<>());
        }
        for (int i = 0; i < WARM + TURNS; i++) {
            String text = DemoScenarios.text(name).replaceFirst(TRIP_LEVEL + "[0-9.]+", TRIP_LEVEL + tripV(i));
            Watch watch = Watch.over(new TabWork().begin("run", Optional.empty()), 60, () -> {});
            long startNs = System.nanoTime();
            ReadyScenario scenario = scenarios.read("scenario", text);
            long readNs = System.nanoTime();
            RunStory story = runs.story(scenario, 600, watch);
            long ranNs = System.nanoTime();
            assertThat(JsonText.onOneLine(RunJson.of(story))).isNotEmpty();
            if (i >= WARM) {
                partsMs.get("read").add((readNs - startNs) / 1e6);
                partsMs.get("run").add((ranNs - readNs) / 1e6);
                partsMs.get("spell").add((System.nanoTime() - ranNs) / 1e6);
                partsMs.get("all").add((System.nanoTime() - startNs) / 1e6);
            }
        }
        return partsMs;
    }

    /** The turns of a hand over the trip level, up and up again: each keeps the lamps lit for another while. */
    private static double tripV(int turn) {
        return 11.2 + 0.05 * (turn % 16);
    }

    private static void print(String what, List<Double> valuesMs) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f ms | %.1f ms |%n",
                what,
                percentile(valuesMs, 0.5),
                percentile(valuesMs, 0.95));
    }

    private static double percentile(List<Double> values, double share) {
        return values.stream().sorted().toList().get((int) (share * values.size()));
    }
}

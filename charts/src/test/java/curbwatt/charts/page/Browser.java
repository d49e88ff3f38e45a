package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A real browser on a page of its own. Where there is no Chromium with its driver, tests that ask for one are skipped; where
 * {@code CURBWATT_BROWSER=required} is set, they fail.
 */
final class Browser implements AutoCloseable {

    private static final List<String> PROGRAMS = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser");
    private static final List<String> DRIVERS = List.of("/usr/bin/chromedriver", "/usr/lib/chromium/chromedriver");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final PageServer server;
    private final ChromeDriver driver;
    private final Path profile;
    private final List<Throwable> faults;

    private Browser(PageServer server, ChromeDriver driver, Path profile, List<Throwable> faults) {
        this.server = server;
        this.driver = driver;
        this.profile = profile;
        this.faults = faults;
    }

    /** A browser of a window's size. */
    static Browser open(int width, int height) throws IOException {
        Optional<String> program = present(PROGRAMS);
        Optional<String> service = present(DRIVERS);
        boolean there = program.isPresent() && service.isPresent();
        if ("required".equals(System.getenv("CURBWATT_BROWSER"))) {
            assertThat(there)
                    .as("Chromium and its driver, which CURBWATT_BROWSER=required asks for")
                    .isTrue();
        }
        assumeTrue(there, "no Chromium with chromedriver on this machine: the page is not tried in a browser");
        Path profile = Files.createTempDirectory("curbwatt-browser");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program.orElseThrow());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--window-size=" + width + "," + height,
                "--user-data-dir=" + profile);
        options.setCapability("goog:loggingPrefs", Map.of("browser", "ALL"));
        List<Throwable> faults = new CopyOnWriteArrayList<>();
        PageServer server = PageServer.start(
                0, new FirstScenario("demo:lane-watch", DemoScenarios.text("lane-watch")), faults::add);
        ChromeDriverService driver = new ChromeDriverService.Builder()
                .usingDriverExecutable(Path.of(service.orElseThrow()).toFile())
                .build();
        return new Browser(server, new ChromeDriver(driver, options), profile, faults);
    }

    private static Optional<String> present(List<String> names) {
        return names.stream().filter(name -> Files.isExecutable(Path.of(name))).findFirst();
    }

    /** Opens the page afresh, as in a new tab, and waits for its first run. */
    void visit() {
        // a place of the page's own origin where none of its scripts runs, to forget what the tab remembers
        driver.get(server.address() + "icon.svg");
        driver.executeScript("sessionStorage.clear()");
        driver.get(server.address().toString());
        awaitRun(0);
    }

    /** Gives the page a size that the window itself can't have. */
    void narrowTo(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** Lets the page believe that the viewer prefers something, by name and value; nothing: no wish. */
    void prefer(String... namesAndValues) {
        List<Map<String, Object>> features = new ArrayList<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            features.add(Map.of("name", namesAndValues[i], "value", namesAndValues[i + 1]));
        }
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", features));
    }

    /** Runs a script of the test's own, as the browser's tools may although the page's policy forbids it. */
    void injectOutsideThePolicy(String script) {
        driver.executeCdpCommand("Runtime.evaluate", Map.of("expression", script));
    }

    ChromeDriver driver() {
        return driver;
    }

    /** How many runs the page has shown. */
    long runs() {
        return (long) script("return Number(document.documentElement.dataset.runs ?? 0)");
    }

    /** Waits until the page has shown more runs than that, and nothing is under way. */
    void awaitRun(long before) {
        await("return Number(document.documentElement.dataset.runs ?? 0) > " + before
                + " && !document.getElementById('answer').classList.contains('busy')");
    }

    /** Waits until a script returns true. */
    void await(String script) {
        new WebDriverWait(driver, PATIENCE, Duration.ofMillis(30)).until(unused -> Boolean.TRUE.equals(script(script)));
    }

    Object script(String script, Object... arguments) {
        return ((JavascriptExecutor) driver).executeScript(script, arguments);
    }

    WebElement the(String id) {
        return driver.findElement(By.id(id));
    }

    String text(String id) {
        return the(id).getText();
    }

    /** Turns a knob as a hand does: sets the slider or field and lets the page know. */
    void turn(String id, double value) {
        long before = runs();
        nudge(id, value);
        awaitRun(before);
    }

    /** Turns a knob without waiting for what comes of it. */
    void nudge(String id, double value) {
        script(
                "const knob = document.getElementById(arguments[0]); knob.value = arguments[1];"
                        + "knob.dispatchEvent(new Event('input', {bubbles: true}));",
                id,
                value);
    }

    void screenshot(Path file) throws IOException {
        Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    }

    /** What the browser complained of since it was last asked: errors of scripts, and what the page's policy forbade. */
    List<String> complaints() {
        List<String> complaints = new ArrayList<>();
        driver.manage().logs().get("browser").forEach(entry -> complaints.add(entry.getMessage()));
        // a scenario that is refused is answered with 422, and the browser notes that too
        complaints.removeIf(complaint -> complaint.contains("status of 422"));
        faults.forEach(fault -> complaints.add(fault.toString()));
        return complaints;
    }

    @Override
    public void close() throws IOException {
        driver.quit();
        server.close();
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        }
    }
}

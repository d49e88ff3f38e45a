package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.ScenarioRunner;
import curbwatt.charts.wording.Headline;
import curbwatt.charts.wording.PlainText;
import curbwatt.charts.wording.SettingText;
import curbwatt.charts.wording.SettingsFinding;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.settings.Cell;
import curbwatt.engine.study.settings.CellListener;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.engine.study.settings.SettingsResult;
import curbwatt.engine.study.settings.SettingsStudy;
import curbwatt.engine.study.settings.Spread;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What the page's server answers, held against the same runs of the command line. */
class PageAnswersTest {

    private static final String LANE_WATCH = DemoScenarios.text("lane-watch");
    private static PageServer server;
    private static URI page;

    @BeforeAll
    static void start() {
        server = PageServer.start(0, new FirstScenario("demo:lane-watch", LANE_WATCH), fault -> {});
        page = server.address();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static RunStory story(String text) {
        return new ScenarioRunner(new Scenarios().read("scenario", text)).run(share -> {});
    }

    private static double tripS(RunStory story) {
        return story.result().events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .mapToDouble(Event::timeS)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRunHasTheVerdictAndTheTripOfTheCommandLine() throws IOException {
        JsonNode answer = Asked.post(page, "/run", "a", LANE_WATCH).json();
        RunStory story = story(LANE_WATCH);
        assertThat(answer.get("sentence").stringValue()).isEqualTo(new Headline(story).sentence());
        double trip = StreamSupport.stream(answer.get("marks").spliterator(), false)
                .filter(mark -> mark.get("words").stringValue().equals("trip"))
                .mapToDouble(mark -> mark.get("timeS").doubleValue())
                .findFirst()
                .orElseThrow();
        assertThat(trip).isCloseTo(tripS(story), Offset.offset(1e-6));
        assertThat(answer.at("/trace/timeMs").size())
                .isBetween(500, 700)
                .isEqualTo(answer.at("/trace/meanMv").size());
        assertThat(answer.at("/loads").size())
                .isEqualTo((int) story.scenario().vehicle().loads().count());
    }

    @Test
    void anAnswerSaysHowLongItsPartsTook() throws IOException {
        String head = Asked.post(page, "/run", "a", LANE_WATCH).head();
        String number = ";dur=\\d+\\.\\d";
        assertThat(head)
                .containsPattern(
                        "(?i)server-timing: wait" + number + ", read" + number + ", run" + number + ", spell" + number);
    }

    @Test
    void aProblemComesWithItsPlaceInTheWordsOfTheCommandLine() throws IOException {
        Asked answer = Asked.post(page, "/run", "a", LANE_WATCH.replace("\"tripV\": 12.2", "\"tripV\": 122"));
        assertThat(answer.status()).isEqualTo(422);
        JsonNode problem = answer.json().at("/problems/0");
        assertThat(problem.get("path").stringValue()).isEqualTo("vehicle.cutoffs[0].tripV");
        assertThat(problem.get("message").stringValue()).contains("122");
        assertThat(problem.get("line").intValue()).isPositive();
    }

    @Test
    void aFileIsOpenedWithoutItsCommentsAndRunsTheSame() throws IOException {
        JsonNode opened = Asked.post(page, "/open", "a", LANE_WATCH).json();
        assertThat(opened.get("runs").booleanValue()).isTrue();
        String plain = opened.get("document").stringValue();
        assertThat(plain).doesNotContain("//");
        assertThat(new Headline(story(plain)).sentence()).isEqualTo(new Headline(story(LANE_WATCH)).sentence());
    }

    @Test
    void aBrokenFileIsToldWithLineAndColumn() throws IOException {
        JsonNode opened =
                Asked.post(page, "/open", "a", "{\n  \"format\": 1,,\n}").json();
        assertThat(opened.get("runs").booleanValue()).isFalse();
        assertThat(opened.get("document").isNull()).isTrue();
        assertThat(opened.at("/problems/0/line").intValue()).isEqualTo(2);
    }

    /** Without flashes, so that the search has an end soon. */
    private static final String STEADY = LANE_WATCH
            .replace(
                    "\"stages\": [\"warning\", \"closure\", \"crew\", \"camera\"]", "\"stages\": [\"crew\", \"scene\"]")
            .replace(
                    "\"Roof bar\", \"Corner heads\", \"Arrow board\", \"Radios\", \"Computer\"], \"forMin\"",
                    "\"Radios\"], \"forMin\"");

    private static List<JsonNode> lines(String path, String text) throws IOException {
        return Asked.post(page, path, "m", text)
                .body()
                .lines()
                .filter(line -> !line.isEmpty())
                .map(line -> new ObjectMapper().readTree(line))
                .toList();
    }

    @Test
    void theMapIsTheSearchOfTheCommandSettings() throws IOException {
        List<JsonNode> told = lines("/map?cutoff=0&tripV=11.6,12.2,14&delayS=5,60", STEADY);
        ReadyScenario scenario = new Scenarios().read("scenario", STEADY);
        SettingsResult result = new SettingsStudy(
                        new Question(Simulation.of(scenario.vehicle(), scenario.scene()), scenario.requirements()),
                        new SettingsPlan(
                                Optional.empty(),
                                List.of(11.6, 12.2, 14.0),
                                List.of(5.0, 60.0),
                                List.of(),
                                Spread.usual()))
                .run(new RunPool(1), StudyWatch.none(), CellListener.none());
        List<JsonNode> squares =
                told.stream().filter(line -> line.has("outcome")).toList();
        assertThat(squares).hasSize(6);
        for (JsonNode square : squares) {
            Cell cell = result.map()
                    .at(0, square.get("column").intValue(), square.get("row").intValue())
                    .orElseThrow();
            assertThat(square.get("outcome").stringValue().equals("met")).isEqualTo(cell.works());
            assertThat(square.get("words").stringValue())
                    .isEqualTo(
                            cell.works()
                                    ? "all met"
                                    : SettingText.reason(
                                            cell.fate().failures().get(0).kind()));
        }
        JsonNode last = told.get(told.size() - 1);
        Cell advised = result.recommendation().orElseThrow().cell();
        assertThat(last.get("headline").stringValue()).isEqualTo(new SettingsFinding(result).headline());
        assertThat(last.at("/best/column").intValue()).isEqualTo(advised.level());
        assertThat(last.at("/best/row").intValue()).isEqualTo(advised.delay());
        assertThat(server.underWay()).isZero();
    }

    @Test
    void aSceneThatAsksForNothingHasAMapOfWhenItTrips() throws IOException {
        String text =
                LANE_WATCH.substring(0, LANE_WATCH.indexOf("\"requirements\"")) + "\"trace\": { \"spacingS\": 5 }\n}";
        List<JsonNode> told = lines("/map?cutoff=0&tripV=12.2,12.3&delayS=5,60", text);
        assertThat(told).hasSize(5);
        JsonNode square = told.get(0);
        assertThat(square.get("outcome").stringValue()).isEqualTo("asksNothing");
        assertThat(square.get("short").stringValue()).isEqualTo(PlainText.time(tripS(story(LANE_WATCH))));
        assertThat(told.get(4).get("finished").booleanValue()).isTrue();
    }

    @Test
    void aMapOfLevelsOutOfOrderIsRefusedWithTheReason() throws IOException {
        Asked answer = Asked.post(page, "/map?cutoff=0&tripV=12.2,11.6&delayS=5,60", "m", LANE_WATCH);
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.json().get("message").stringValue())
                .contains("tripLevelsV")
                .contains("must rise");
    }

    @Test
    void aMapStopsWhenItsTabIsGone() throws Exception {
        String tripsV = IntStream.range(0, 24)
                .mapToObj(i -> String.valueOf(10 + 0.05 * i))
                .collect(Collectors.joining(","));
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), page.getPort())) {
            socket.getOutputStream()
                    .write(Asked.question(
                                    page,
                                    "/map?cutoff=0&delayS=0,5,9&tripV=" + tripsV,
                                    "gone",
                                    DemoScenarios.text("night-closure"))
                            .getBytes(StandardCharsets.UTF_8));
            assertThat(socket.getInputStream().read()).isEqualTo('H');
            assertThat(server.underWay()).isEqualTo(1);
        }
        long untilNs = System.nanoTime() + 10_000_000_000L;
        while (server.underWay() > 0 && System.nanoTime() < untilNs) {
            Thread.sleep(20);
        }
        assertThat(server.underWay()).isZero();
    }
}

package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.Question;
import curbwatt.engine.verdict.Requirement;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.file.Setting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the studies answer on demos, held against plain runs of the same demo with the answer set by hand. The demos are
 * searched coarsely, and their side heads flash together, so that a run takes less time.
 */
class StudyStoriesTest {

    private static final String TOGETHER = "vehicle.circuits[Corner heads].loads[Side head].sync=simultaneous";
    private static final String WATCH = "scene.phases[Watch].durationMin=";
    private static final String HOLD = "requirements.hold[0].forMin=";

    @TempDir
    private Path folder;

    private JsonNode asked(String... args) throws IOException {
        Path out = folder.resolve(args[0]);
        Said said = Said.by(Stream.concat(Stream.of(args), Stream.of("--out", out.toString()))
                .toArray(String[]::new));
        assertThat(said.err()).doesNotContain("Exception");
        assertThat(said.exitCode()).isZero();
        return JsonMapper.builder().build().readTree(Files.readString(out.resolve("result.json")));
    }

    /** A plain run of a demo with some values set. */
    private static Answer plain(String demo, String... settings) {
        List<Setting> all = new ArrayList<>();
        Stream.of(settings).map(Setting::of).forEach(all::add);
        ReadyScenario ready = new Scenarios().demo(demo, all);
        return new Question(Simulation.of(ready.vehicle(), ready.scene()), ready.requirements()).answer();
    }

    private static String number(JsonNode node) {
        return Double.toString(node.doubleValue());
    }

    private static double heldMin(Answer answer) {
        return answer.findings(Requirement.HoldCircuits.class)
                .mapToDouble(finding -> finding.figure())
                .min()
                .orElseThrow();
    }

    private static Answer laneWatchAt(JsonNode setting) {
        return plain(
                "lane-watch",
                TOGETHER,
                "vehicle.cutoffs[0].tripV=" + number(setting.path("tripV")),
                "vehicle.cutoffs[0].tripDelayS=" + number(setting.path("tripDelayS")));
    }

    @Test
    void theRecommendedSettingPassesAndNeighboursFailAsTheyAreSaidTo() throws IOException {
        JsonNode result = asked(
                "settings",
                "demo:lane-watch",
                "--set",
                TOGETHER,
                "--set",
                "studies={\"settings\": {\"sensorSpreadV\": 0.5, \"capacityLossPercent\": 30, \"loadSpreadPercent\": 30}}",
                "--levels",
                "11.6,12.1",
                "--delays",
                "60,300");
        JsonNode best = result.path("recommendation");
        Answer recommended = laneWatchAt(best);
        assertThat(recommended.isMet()).isTrue();
        assertThat(recommended.restartMarginV())
                .isCloseTo(best.path("fate").path("restartMarginV").doubleValue(), within(1e-6));
        int failing = 0;
        for (JsonNode neighbour : best.path("neighbours")) {
            JsonNode fate = neighbour.path("fate");
            Answer answer = laneWatchAt(neighbour);
            assertThat(answer.isMet()).isEqualTo(fate.path("works").booleanValue());
            for (JsonNode failure : fate.path("failures")) {
                failing++;
                assertThat(failure.path("reason").stringValue()).isEqualTo("cut off too early");
                assertThat(failure.path("missing").doubleValue()).isCloseTo(75 - heldMin(answer), within(1e-6));
            }
        }
        assertThat(failing).as("a neighbour that fails").isPositive();
        JsonNode present = result.path("present");
        assertThat(present.path("fate").path("works").booleanValue()).isFalse();
        assertThat(laneWatchAt(present).firstTripS().orElseThrow())
                .isCloseTo(present.path("fate").path("firstTripS").doubleValue(), within(1e-6));
    }

    @Test
    void theSmallestBatteryOfTheListHoldsAndTheNextSmallerDoesNot() throws IOException {
        String small = "{\"part\": \"battery-agm-deep-100\"%s}";
        String large = "{\"chemistry\": \"agm\", \"c20Ah\": 130, \"reserveMin\": 260, \"coldCrankingA\": 800%s}";
        JsonNode result = asked(
                "size",
                "demo:two-batteries",
                "--draws",
                "2",
                "--set",
                "studies.size.labels=[" + small.formatted("") + ", " + large.formatted("") + "]");
        assertThat(result.path("chosen").stringValue()).isEqualTo("agm 130 Ah 260 min 800 A");
        String aged = ", \"capacityHealthPercent\": 80, \"resistanceGrowthFactor\": 1.25";
        assertThat(twoBatteries(large.formatted(aged)).isMet()).isTrue();
        Answer smaller = twoBatteries(small.formatted(aged));
        assertThat(smaller.isMet()).isFalse();
        JsonNode failure = result.path("labels").path(0).path("failure");
        assertThat(failure.path("requirement").stringValue()).isEqualTo("HoldCircuits");
        assertThat(failure.path("figure").doubleValue()).isCloseTo(heldMin(smaller), within(1e-6));
        double needAh = result.path("atStated").path("holdsAh").doubleValue();
        assertThat(needAh).isBetween(100.0, 130.0);
    }

    /** The auxiliary battery in the conditions that the demo states: the start at 0 °C instead of 12, the air as much colder. */
    private static Answer twoBatteries(String battery) {
        return plain(
                "two-batteries",
                "vehicle.auxiliary.battery=" + battery,
                "scene.start={\"chargePercent\": 95, \"auxiliaryChargePercent\": 95, \"batteryC\": 0}",
                "scene.phases[0].airC=0",
                "scene.phases[1].airC=-2",
                "scene.phases[2].airC=-3");
    }

    @Test
    void theWayToStandServesAndChangesWhereItIsSaidTo() throws IOException {
        String[] quick = {TOGETHER, "vehicle.cutoffs[0].tripV=11.8", "vehicle.cutoffs[0].tripDelayS=60"};
        JsonNode result = asked("idle", "demo:lane-watch", "--set", quick[0], "--set", quick[1], "--set", quick[2]);
        assertThat(result.path("measure").stringValue()).isEqualTo("engine hours");
        assertThat(result.path("best").stringValue()).isEqualTo("engine off");
        Answer off = plain("lane-watch", quick);
        assertThat(off.isMet()).isTrue();
        JsonNode flip = null;
        for (JsonNode one : result.path("flips")) {
            flip = one.path("lever").stringValue().equals("scene hours")
                            && one.path("factor").doubleValue() > 1
                    ? one
                    : flip;
        }
        assertThat(flip).as("a longer watch changes the answer").isNotNull();
        assertThat(flip.path("best").stringValue()).isEqualTo("automatic start");
        double factor = flip.path("factor").doubleValue();
        assertThat(standing(factor - 0.01, quick).isMet()).isTrue();
        assertThat(standing(factor + 0.01, quick).isMet()).isFalse();
    }

    /** The watch so many times as long, and as much longer to be held: fifteen minutes of it are the drive. */
    private static Answer standing(double factor, String... settings) {
        return plain(
                "lane-watch",
                Stream.concat(Stream.of(settings), Stream.of(WATCH + 60 * factor, HOLD + (15 + 60 * factor)))
                        .toArray(String[]::new));
    }

    @Test
    void eachDrawIsTheRunWithItsValuesAndTheChanceCountsThem() throws IOException {
        String fixed = "{\"distribution\": \"fixed\"}";
        String trip = "vehicle.cutoffs[0].tripV=11.9";
        JsonNode result = asked(
                "odds",
                "demo:lane-watch",
                "--runs",
                "64",
                "--set",
                TOGETHER,
                "--set",
                trip,
                "--set",
                "studies={\"odds\": {\"temperature\": F, \"loadCurrent\": F, \"alternatorHeat\": F, \"sensor\": F}}"
                        .replace("F", fixed));
        List<String> lines = Files.readAllLines(folder.resolve("odds/samples.csv"));
        List<String> heads = List.of(lines.get(0).split(",", -1));
        int held = 0;
        for (int i = 1; i < lines.size(); i++) {
            List<String> cells = List.of(lines.get(i).split(",", -1));
            boolean isHeld = Boolean.parseBoolean(cells.get(heads.indexOf("held")));
            held += isHeld ? 1 : 0;
            if (i % 16 == 0) {
                double health = Double.parseDouble(cells.get(heads.indexOf("batteryHealthFactor")));
                double length = Double.parseDouble(cells.get(heads.indexOf("sceneLengthFactor")));
                Answer answer = plain(
                        "lane-watch",
                        TOGETHER,
                        trip,
                        WATCH + 60 * length,
                        HOLD + (15 + 60 * length),
                        "vehicle.battery.capacityHealthPercent=" + text(90 * health),
                        "vehicle.battery.resistanceGrowthFactor=" + text(1.2 / health));
                assertThat(heldMin(answer) >= 15 + 60 * length - 1e-6)
                        .as(lines.get(i))
                        .isEqualTo(isHeld);
                assertThat(answer.restartMarginV())
                        .as(lines.get(i))
                        .isCloseTo(Double.parseDouble(cells.get(heads.indexOf("restartMarginV"))), within(1e-3));
            }
        }
        assertThat(held).isBetween(1, 63);
        assertThat(result.path("chances").path("held").path("hits").intValue()).isEqualTo(held);
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, "%.9f", value);
    }
}

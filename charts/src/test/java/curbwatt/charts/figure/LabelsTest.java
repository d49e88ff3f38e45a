package curbwatt.charts.figure;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SampleRun;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LabelsTest {

    @Test
    void eventsAreLabelledWithTheirTimes() {
        assertThat(texts(VoltageFigure.of(SampleStory.nightClosure(), Pictures.CAPTION)))
                .contains(
                        "warning 1:43",
                        "radio drops out 2:03",
                        "trip 2:14",
                        "restart no longer assured 2:37",
                        "reclosed 3:05",
                        "trip 11.80 V",
                        "warning 12.00 V",
                        "reclose 13.20 V",
                        "lane watch",
                        "engine off")
                .doesNotContain("+1 more");
    }

    @Test
    void whatFindsNoRoomIsCounted() {
        RunStory story =
                SampleStory.engineOff(4 * SampleStory.HOUR_S, PictureBytesTest.chatter(4 * SampleStory.HOUR_S));
        List<String> texts = texts(VoltageFigure.of(story, Pictures.CAPTION));

        List<String> labels = texts.stream()
                .filter(text -> text.matches("(trip|reclosed) \\d:\\d\\d"))
                .toList();
        assertThat(labels).hasSizeBetween(6, 8).contains("trip 0:05", "reclosed 0:11");
        assertThat(texts).contains("+" + (40 - labels.size()) + " more");
    }

    @Test
    void eventsAtOneInstantAreOneMark() {
        RunStory story = SampleStory.engineOff(
                2 * SampleStory.HOUR_S,
                List.of(
                        new Event(3600, EventKind.LOAD_DROPPED_OUT, "radio", 10.5, 0.5),
                        new Event(3600.1, EventKind.LOAD_DROPPED_OUT, "dock", 10.5, 0.5)));

        assertThat(texts(VoltageFigure.of(story, Pictures.CAPTION))).contains("2 drop-outs 1:00");
    }

    @Test
    void bothNodesAndBothCutoffsAreLabelled() {
        RunStory story = SampleRun.TWO_BATTERIES.story();
        assertThat(texts(VoltageFigure.of(story, Pictures.CAPTION)))
                .anyMatch(text -> text.matches("starter node 1\\d\\.\\d\\d V"))
                .anyMatch(text -> text.matches("equipment node 1\\d\\.\\d\\d V"))
                .contains("trip 11.80 V, Light cutoff", "trip 11.20 V, Radio cutoff", "link opens 0:08");
        assertThat(texts(BalanceFigure.of(story, Pictures.CAPTION)))
                .contains("starter battery", "auxiliary battery", "charging starter", "charging auxiliary");
        assertThat(texts(LinkFigure.of(story, Pictures.CAPTION).orElseThrow()))
                .contains("link closes 2:08", "closed 19 % of the time");
        assertThat(LinkFigure.of(SampleStory.nightClosure(), Pictures.CAPTION)).isEmpty();
    }

    @Test
    void theOpenTimeOfEachOfSeveralCutoffsIsABandWithItsName() {
        Picture two = VoltageFigure.of(SampleRun.TWO_BATTERIES.story(), Pictures.CAPTION);
        assertThat(texts(two)).contains("Light cutoff", "contact open");
        assertThat(two.alternativeText()).containsPattern("Light cutoff is open for \\d:\\d\\d\\.");

        Picture one = VoltageFigure.of(SampleStory.nightClosure(), Pictures.CAPTION);
        assertThat(texts(one)).doesNotContain("contact open");
        assertThat(one.alternativeText()).doesNotContain("is open for");
    }

    @Test
    void theCloseUpIsThatOfTheNodeThatFlashes() {
        Picture two = FlashFigure.of(SampleRun.TWO_BATTERIES.story(), Pictures.CAPTION)
                .orElseThrow();
        assertThat(texts(two)).contains("Equipment node").doesNotContain("Starter node");
        Picture charger =
                FlashFigure.of(SampleRun.CHARGER.story(), Pictures.CAPTION).orElseThrow();
        assertThat(texts(charger)).contains("Equipment node").anyMatch(text -> text.startsWith("sensed at the end of"));
    }

    @Test
    void raisedIdleIsMarkedAndAStartByHandIsNot() {
        RunStory story = SampleStory.engineOff(
                2 * SampleStory.HOUR_S,
                List.of(
                        new Event(1200, EventKind.IDLE_RAISED, "idle control", 12.1, 0.6),
                        new Event(3600, EventKind.IDLE_RELEASED, "idle control", 14.1, 0.7),
                        new Event(6000, EventKind.ENGINE_STARTED, "clear the lane", 9.1, 0.7)));
        assertThat(texts(VoltageFigure.of(story, Pictures.CAPTION)))
                .contains("idle raised 0:20", "idle released 1:00")
                .noneMatch(text -> text.startsWith("automatic start"));
    }

    @Test
    void aNarrowPhaseHasItsNameInTwoLines() {
        List<String> texts = texts(VoltageFigure.of(SampleRun.TWO_BATTERIES.story(), Pictures.CAPTION));
        assertThat(texts).contains("Drive", "out", "Lane watch").doesNotContain("Drive…");
    }

    @Test
    void flashCyclesSayTheirSagAndTheTripLevel() {
        assertThat(texts(FlashFigure.of(SampleStory.nightClosure(), Pictures.CAPTION)
                        .orElseThrow()))
                .contains("sag 206 mV", "trip 11.80 V", "peak 52.0 A", "least 22.0 A");
    }

    @Test
    void theAlternatorSaysWhereItBalances() {
        assertThat(texts(AlternatorFigure.of(SampleStory.nightClosure(), Pictures.CAPTION)
                        .orElseThrow()))
                .anyMatch(text -> text.matches("balance \\d+/min"))
                .contains("not to be", "trusted", "hot");
    }

    static Stream<Picture> pictures() {
        return PictureBytesTest.stories().flatMap(story -> Pictures.of(story).stream());
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void noLabelCoversAnotherOrLeavesTheSheet(Picture picture) {
        List<Pen.Written> written = written(picture);
        Sheet sheet = (Sheet) picture;
        Rectangle2D bounds = new Rectangle2D.Double(0, 0, sheet.width(), sheet.height());
        for (int i = 0; i < written.size(); i++) {
            assertThat(bounds.contains(written.get(i).box()))
                    .as(written.get(i).text())
                    .isTrue();
            for (int k = 0; k < i; k++) {
                assertThat(written.get(i).box().intersects(written.get(k).box()))
                        .as(written.get(i).text() + " over " + written.get(k).text())
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void lanesKeepTextsAndLinesApart(long seed) {
        Random random = new Random(seed);
        List<LabelLanes.Wish> wishes = random.doubles(12, 60, 800)
                .sorted()
                .mapToObj(x -> new LabelLanes.Wish(x, 30 + 120 * random.nextDouble()))
                .toList();
        List<LabelLanes.Place> places = LabelLanes.places(wishes, 60, 810, 5);

        assertThat(places).hasSizeGreaterThan(4);
        for (LabelLanes.Place one : places) {
            assertThat(one.fromPx()).isGreaterThanOrEqualTo(60);
            assertThat(one.toPx()).isLessThanOrEqualTo(810);
            for (LabelLanes.Place other : places) {
                boolean apart = one.equals(other)
                        || one.lane() != other.lane()
                        || one.toPx() < other.fromPx()
                        || other.toPx() < one.fromPx();
                boolean crossed = !one.equals(other)
                        && one.lane() <= other.lane()
                        && one.anchorPx() > other.fromPx()
                        && one.anchorPx() < other.toPx();
                assertThat(apart).isTrue();
                assertThat(crossed).isFalse();
            }
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 40);
    }

    private static List<String> texts(Picture picture) {
        return written(picture).stream().map(Pen.Written::text).toList();
    }

    private static List<Pen.Written> written(Picture picture) {
        Graphics2D scrap = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
        return ((ChartDrawing) ((Sheet) picture).drawing()).written(scrap);
    }
}

package curbwatt.charts.figure;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SampleRun;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class PictureBytesTest {

    private static final int MOST_SVG_BYTES = 150_000;

    @Test
    void theSameRunGivesTheSameBytes() {
        List<Picture> pictures = Pictures.of(SampleStory.nightClosure());
        String first = Pictures.digest(pictures);

        assertThat(Pictures.digest(pictures)).isEqualTo(first);
        assertThat(Pictures.digest(Pictures.of(SampleStory.nightClosure()))).isEqualTo(first);
    }

    /** Java fails on any text where it finds neither fontconfig nor a cache of what fontconfig once said. */
    @Test
    void anotherProcessWithoutFontsGivesTheSameBytes(@TempDir Path home) throws IOException, InterruptedException {
        Path noFonts = Files.writeString(home.resolve("none.conf"), "<?xml version=\"1.0\"?><fontconfig></fontconfig>");
        ProcessBuilder builder = new ProcessBuilder(
                System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                "-Duser.home=" + home,
                "-cp",
                System.getProperty("java.class.path"),
                Pictures.class.getName());
        builder.environment().put("FONTCONFIG_FILE", noFonts.toString());
        builder.environment().remove("DISPLAY");
        Process process = builder.redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor()).as(printed).isZero();
        assertThat(printed.strip()).endsWith(Pictures.digest(Pictures.of(SampleStory.nightClosure())));
    }

    @TestFactory
    Stream<DynamicTest> drawingsAreSoundAndLight() {
        return stories()
                .flatMap(story -> Pictures.of(story).stream())
                .map(picture -> DynamicTest.dynamicTest(picture.name(), () -> {
                    Element root = parsed(picture.svg().alone()).getDocumentElement();
                    String title = text(root, "title");
                    assertThat(title).isEqualTo(Pictures.CAPTION.title());
                    assertThat(text(root, "desc"))
                            .isEqualTo(picture.alternativeText())
                            .isNotBlank();
                    assertThat(root.getAttribute("role")).isEqualTo("img");
                    assertThat(picture.svg().alone()).contains("@font-face").hasSizeLessThan(MOST_SVG_BYTES);
                    assertThat(picture.svg().inPage()).startsWith("<svg").doesNotContain("@font-face");
                    assertThat(ids(root))
                            .allMatch(id -> id.startsWith(picture.name() + "-"))
                            .doesNotHaveDuplicates();
                }));
    }

    @Test
    void imagesHaveTwiceTheSizeOfDrawings() throws IOException {
        for (Picture picture : Pictures.of(SampleStory.nightClosure())) {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
            assertThat(picture.svg().alone())
                    .contains("viewBox=\"0 0 " + image.getWidth() / 2 + " " + image.getHeight() / 2 + "\"");
        }
    }

    @Test
    void namesFromAScenarioCannotBreakADrawing() throws Exception {
        Caption hostile = new Caption("<script>alert(1)</script> & \"quotes\"", "bell \u0007, lone \ud800, Ω ≥ –");
        RunStory story = SampleStory.engineOff(
                3600, List.of(new Event(600, EventKind.LOAD_DROPPED_OUT, "</text><b>", 10.5, 0.5)));
        String svg = VoltageFigure.of(story, hostile).svg().alone();

        assertThat(text(parsed(svg).getDocumentElement(), "title")).isEqualTo(hostile.title());
        assertThat(svg).doesNotContain("<script>").doesNotContain("<b>").contains("&lt;/text");
    }

    @Test
    void aVehicleWithoutAlternatorOrFlashingHasNoPictureOfThem() {
        RunStory story = SampleStory.withoutAlternator();

        assertThat(AlternatorFigure.of(story, Pictures.CAPTION)).isEmpty();
        assertThat(FlashFigure.of(story, Pictures.CAPTION)).isEmpty();
    }

    static Stream<RunStory> stories() {
        return Stream.of(
                SampleStory.nightClosure(),
                SampleStory.withoutAlternator(),
                SampleRun.TWO_BATTERIES.story(),
                SampleRun.CHARGER.story(),
                SampleRun.IN_TURN.story(),
                SampleStory.engineOff(600, List.of()),
                SampleStory.engineOff(5 * 86400, chatter(5 * 86400)),
                SampleStory.engineOff(4 * SampleStory.HOUR_S, chatter(4 * SampleStory.HOUR_S)));
    }

    /** Forty trips and recloses, evenly spread. */
    static List<Event> chatter(double durationS) {
        List<Event> events = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            EventKind kind = i % 2 == 0 ? EventKind.CUTOFF_TRIPPED : EventKind.CUTOFF_RECLOSED;
            events.add(new Event((i + 1) * durationS / 42, kind, "light cutoff", 12, 0.6));
        }
        return events;
    }

    static Document parsed(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    private static String text(Element root, String name) {
        return root.getElementsByTagName(name).item(0).getTextContent();
    }

    private static List<String> ids(Element root) {
        List<String> ids = new ArrayList<>();
        NodeList all = root.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            if (!id.isEmpty()) {
                ids.add(id);
            }
        }
        return ids;
    }
}

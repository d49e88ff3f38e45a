package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;

/** Every picture of a run, and a digest of their bytes that another process can print. */
final class Pictures {

    static final Caption CAPTION = new Caption("What the picture finds", "under which conditions, 5 °C");

    private Pictures() {}

    static List<Picture> of(RunStory story) {
        List<Picture> pictures = new ArrayList<>();
        pictures.add(VoltageFigure.of(story, CAPTION));
        pictures.add(BalanceFigure.of(story, CAPTION));
        LinkFigure.of(story, CAPTION).ifPresent(pictures::add);
        AlternatorFigure.of(story, CAPTION).ifPresent(pictures::add);
        FlashFigure.of(story, CAPTION).ifPresent(pictures::add);
        story.flashing().flatMap(flashing -> TimingFigure.of(flashing, CAPTION)).ifPresent(pictures::add);
        pictures.add(DischargeFigure.of(curves(), CAPTION));
        return pictures;
    }

    static List<DischargeCurve> curves() {
        return List.of(
                curve("5 A", 92, 12.7), curve("25 A", 70, 12.5), curve("50 A", 64, 12.3), curve("100 A", 63, 12));
    }

    private static DischargeCurve curve(String name, double endAh, double startV) {
        return new DischargeCurve(
                name,
                IntStream.rangeClosed(0, 300)
                        .mapToObj(i -> new DischargeCurve.Point(
                                endAh * i / 300, startV - (startV - 10.5) * Math.pow(i / 300.0, 3)))
                        .toList());
    }

    static String digest(List<Picture> pictures) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (Picture picture : pictures) {
                digest.update(picture.svg().alone().getBytes(StandardCharsets.UTF_8));
                digest.update(picture.png());
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Prints the digest of the sample's pictures. */
    public static void main(String[] arguments) {
        System.out.println(digest(of(SampleStory.nightClosure())));
    }
}

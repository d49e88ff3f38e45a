package curbwatt.charts.report;

import curbwatt.charts.figure.Picture;
import curbwatt.charts.figure.Svg;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** A picture with its drawings made: each stands in the page, as a drawing of its own, and as an image. */
final class DrawnPicture {

    private final Picture picture;
    private final String inPage;
    private final byte[] svg;
    private final byte[] png;

    private DrawnPicture(Picture picture) {
        this.picture = picture;
        Svg drawing = picture.svg();
        inPage = drawing.inPage();
        svg = ReportFiles.bytes(drawing.alone());
        png = picture.png();
    }

    /** All of them, in order. */
    static List<DrawnPicture> all(List<Picture> pictures) {
        return made(pictures.stream()
                .map(picture -> (Supplier<Optional<Picture>>) () -> Optional.of(picture))
                .toList());
    }

    /** All that there are, in order, made and drawn on all processors: pictures take longer than the run that they show. */
    static List<DrawnPicture> made(List<Supplier<Optional<Picture>>> makers) {
        return new RunPool(Runtime.getRuntime().availableProcessors())
                .each(makers, maker -> maker.get().map(DrawnPicture::new), StudyWatch.none()).stream()
                        .flatMap(Optional::stream)
                        .toList();
    }

    /** The picture as the page shows it. */
    ReportModel.Shown shown() {
        return new ReportModel.Shown(picture.name(), picture.caption().title(), inPage);
    }

    /** Adds its files below {@code charts/}. */
    void addTo(Map<String, byte[]> files) {
        files.put("charts/" + picture.name() + ".svg", svg);
        files.put("charts/" + picture.name() + ".png", png);
    }
}

package curbwatt.charts.report;

import curbwatt.charts.figure.BlankPicture;
import curbwatt.charts.output.ResultJson;
import curbwatt.charts.output.TraceCsv;
import curbwatt.charts.run.RunStory;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Every file of a run, in memory, so that none is written before all are made. */
public final class ReportFiles {

    private ReportFiles() {}

    /**
     * Draws a first picture on a thread of its own and throws it away, so that those of a run that is begun meanwhile are
     * drawn sooner. Where there is one processor there is no meanwhile, and nothing is done.
     */
    public static void prepare() {
        if (Runtime.getRuntime().availableProcessors() > 1) {
            Thread first = new Thread(() -> DrawnPicture.all(List.of(BlankPicture.make())), "first picture");
            // Nobody waits for it: where it fails, so will the first real picture, and say why.
            first.setUncaughtExceptionHandler((thread, fault) -> {});
            first.setDaemon(true);
            first.start();
        }
    }

    /** Contents by name relative to the run's folder. */
    public static SortedMap<String, byte[]> of(RunStory story) {
        List<DrawnPicture> pictures = DrawnPicture.made(RunPictures.of(story));
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("report.html", bytes(HtmlReport.of(ReportBuilder.of(story, pictures))));
        files.put("result.json", bytes(ResultJson.of(story)));
        files.put("trace.csv", bytes(TraceCsv.of(story.trace())));
        pictures.forEach(picture -> picture.addTo(files));
        return Collections.unmodifiableSortedMap(files);
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

package curbwatt.charts.report;

import curbwatt.charts.figure.Picture;
import curbwatt.charts.output.ResultJson;
import curbwatt.charts.output.TraceCsv;
import curbwatt.charts.run.RunStory;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Every file of a run, in memory, so that none is written before all are made. */
public final class ReportFiles {

    private ReportFiles() {}

    /** Contents by name relative to the run's folder. */
    public static SortedMap<String, byte[]> of(RunStory story) {
        List<Picture> pictures = RunPictures.of(story);
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("report.html", bytes(HtmlReport.of(ReportBuilder.of(story, pictures))));
        files.put("result.json", bytes(ResultJson.of(story)));
        files.put("trace.csv", bytes(TraceCsv.of(story.trace())));
        files.putAll(pictures(pictures));
        return Collections.unmodifiableSortedMap(files);
    }

    /** Each picture as SVG and PNG, below {@code charts/}. */
    static Map<String, byte[]> pictures(List<Picture> pictures) {
        Map<String, byte[]> files = new TreeMap<>();
        for (Picture picture : pictures) {
            files.put("charts/" + picture.name() + ".svg", bytes(picture.svg()));
            files.put("charts/" + picture.name() + ".png", picture.png());
        }
        return files;
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

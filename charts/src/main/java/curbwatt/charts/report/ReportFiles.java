package curbwatt.charts.report;

import curbwatt.charts.figure.Picture;
import curbwatt.charts.output.ResultJson;
import curbwatt.charts.output.TraceCsv;
import curbwatt.charts.run.RunStory;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** Every file of a run, in memory. */
public final class ReportFiles {

    private ReportFiles() {}

    /** Contents by name relative to the run's folder. */
    public static SortedMap<String, byte[]> of(RunStory story) {
        List<Picture> pictures = RunPictures.of(story);
        return PictureFiles.of(
                Map.of(
                        "report.html", HtmlReport.of(ReportBuilder.of(story, pictures)),
                        "result.json", ResultJson.of(story),
                        "trace.csv", TraceCsv.of(story.trace())),
                pictures);
    }
}

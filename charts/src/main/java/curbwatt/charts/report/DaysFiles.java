package curbwatt.charts.report;

import curbwatt.charts.figure.DayChargeFigure;
import curbwatt.charts.figure.DaysFigure;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.output.RosterJson;
import curbwatt.charts.run.RosterStory;
import curbwatt.charts.wording.RosterText;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** Every file that says what came of a roster, in memory. */
public final class DaysFiles {

    private DaysFiles() {}

    /** Contents by name relative to the folder. */
    public static SortedMap<String, byte[]> of(RosterStory story) {
        RosterText text = new RosterText(story);
        List<Picture> pictures = List.of(
                DaysFigure.of(story, RunPictures.caption(text.heading())),
                DayChargeFigure.of(story, RunPictures.caption(text.throughput())));
        return PictureFiles.of(
                Map.of(
                        "report.html",
                        HtmlReport.of(DaysBuilder.of(story, pictures)),
                        "days.json",
                        RosterJson.of(story)),
                pictures);
    }
}

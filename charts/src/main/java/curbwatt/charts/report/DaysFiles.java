package curbwatt.charts.report;

import curbwatt.charts.figure.DayChargeFigure;
import curbwatt.charts.figure.DaysFigure;
import curbwatt.charts.output.RosterJson;
import curbwatt.charts.run.RosterStory;
import curbwatt.charts.wording.RosterText;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Every file that says what came of a roster, in memory. */
public final class DaysFiles {

    private DaysFiles() {}

    /** Contents by name relative to the folder. */
    public static SortedMap<String, byte[]> of(RosterStory story) {
        RosterText text = new RosterText(story);
        List<DrawnPicture> pictures = DrawnPicture.all(List.of(
                DaysFigure.of(story, RunPictures.caption(text.heading())),
                DayChargeFigure.of(story, RunPictures.caption(text.throughput()))));
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("report.html", ReportFiles.bytes(HtmlReport.of(DaysBuilder.of(story, pictures))));
        files.put("days.json", ReportFiles.bytes(RosterJson.of(story)));
        pictures.forEach(picture -> picture.addTo(files));
        return Collections.unmodifiableSortedMap(files);
    }
}

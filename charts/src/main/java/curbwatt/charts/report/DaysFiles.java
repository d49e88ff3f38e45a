package curbwatt.charts.report;

import curbwatt.charts.figure.Caption;
import curbwatt.charts.figure.DaysFigure;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.output.RosterJson;
import curbwatt.charts.run.RosterStory;
import curbwatt.charts.wording.Heading;
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
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("days.json", ReportFiles.bytes(RosterJson.of(story)));
        Heading heading = new RosterText(story).heading();
        Picture picture = DaysFigure.of(story, new Caption(heading.title(), heading.subtitle()));
        files.putAll(ReportFiles.pictures(List.of(picture)));
        return Collections.unmodifiableSortedMap(files);
    }
}

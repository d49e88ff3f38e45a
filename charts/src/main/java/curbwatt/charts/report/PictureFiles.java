package curbwatt.charts.report;

import curbwatt.charts.figure.Picture;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** A folder's files in memory, so that none is written before all are made. */
final class PictureFiles {

    private PictureFiles() {}

    /**
     * Contents by name relative to the folder.
     *
     * @param texts contents of the text files by name
     * @param pictures each as a drawing and as an image in {@code charts}
     */
    static SortedMap<String, byte[]> of(Map<String, String> texts, List<Picture> pictures) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        for (Picture picture : pictures) {
            files.put("charts/" + picture.name() + ".svg", picture.svg().getBytes(StandardCharsets.UTF_8));
            files.put("charts/" + picture.name() + ".png", picture.png());
        }
        return Collections.unmodifiableSortedMap(files);
    }
}

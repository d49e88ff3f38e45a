package curbwatt.charts.page;

import curbwatt.charts.style.Palette;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The page's own files, read from the jar once. A path is looked up in a list and never becomes the name of a file.
 *
 * @param files by path
 */
record StaticFiles(Map<String, ShippedFile> files) {

    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final String STYLE = "text/css; charset=utf-8";

    private static final List<String> SCRIPTS = List.of(
            "api",
            "axes",
            "budget",
            "document",
            "dom",
            "files",
            "knobs",
            "knobset",
            "lamps",
            "main",
            "map",
            "marks",
            "meter",
            "play",
            "problems",
            "rewrite",
            "runner",
            "scene",
            "share",
            "store",
            "switches",
            "timeline",
            "whatif",
            "words");

    /** Copies the map. */
    StaticFiles {
        files = Map.copyOf(files);
    }

    /** The files that ship with the program. */
    static StaticFiles shipped() {
        Map<String, ShippedFile> files = new LinkedHashMap<>();
        files.put("/", ShippedFile.of("page/page.html", "text/html; charset=utf-8"));
        files.put("/page.css", ShippedFile.of("page/page.css", STYLE));
        files.put("/parts.css", ShippedFile.of("page/parts.css", STYLE));
        files.put("/palette.css", new ShippedFile(STYLE, Palette.variables().getBytes(StandardCharsets.UTF_8)));
        ShippedFile icon = ShippedFile.of("page/icon.svg", "image/svg+xml");
        files.put("/icon.svg", icon);
        files.put("/favicon.ico", icon);
        files.put("/regular.woff2", ShippedFile.of("font/Inter-Regular.woff2", "font/woff2"));
        files.put("/strong.woff2", ShippedFile.of("font/Inter-SemiBold.woff2", "font/woff2"));
        SCRIPTS.forEach(name -> files.put("/" + name + ".js", ShippedFile.of("page/" + name + ".js", SCRIPT)));
        return new StaticFiles(files);
    }

    /** Answers with a file. */
    void answer(Visit visit) throws IOException {
        ShippedFile file = files.get(visit.path());
        if (file == null) {
            throw new RefusedException(404, "There is nothing of that name here.");
        }
        if (!List.of("GET", "HEAD").contains(visit.method())) {
            visit.answerHeader("Allow", "GET, HEAD");
            throw new RefusedException(405, "Ask with GET.");
        }
        file.answer(visit);
    }
}

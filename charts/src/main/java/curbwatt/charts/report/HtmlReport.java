package curbwatt.charts.report;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Pattern;

/** The page as one file: style, typeface and drawings inside, nothing fetched. */
final class HtmlReport {

    private static final String FOLDER = "/curbwatt/template/";

    /** A number and its unit belong on one line; the space between them becomes one that does not break. */
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile(" (?<=\\d )(?=(?:h|min|s|d|V|A|Ah|Wh|K|rpm|°C|%)(?![\\p{L}\\d]))");

    private HtmlReport() {}

    /** The page of a model. */
    static String of(ReportModel model) {
        Template template = Mustache.compiler()
                .escapeHTML(true)
                .emptyStringIsFalse(true)
                .withFormatter(
                        value -> NUMBER_AND_UNIT.matcher(value.toString()).replaceAll("\u00a0"))
                .compile(resource("report.mustache"));
        // The model is no value of a map: asked whether it is empty, it would be spelt out, drawings and all.
        StringWriter page = new StringWriter();
        template.execute(model, Map.of("css", Palette.variables() + Typeface.css() + resource("report.css")), page);
        return page.toString();
    }

    private static String resource(String name) {
        try (InputStream stream = HtmlReport.class.getResourceAsStream(FOLDER + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program is damaged: " + FOLDER + name + " is missing");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(FOLDER + name, e);
        }
    }
}

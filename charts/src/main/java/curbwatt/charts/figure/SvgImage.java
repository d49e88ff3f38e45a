package curbwatt.charts.figure;

import curbwatt.charts.style.Typeface;
import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.regex.Pattern;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;

/** A sheet as a vector drawing with real text. */
final class SvgImage {

    private static final String NAMESPACE = SVGGraphics2D.SVG_NAMESPACE_URI;
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    /** Stands where the rules of style go. */
    private static final String STYLE = "rules";

    /** A name in a scenario may hold characters that no XML may. */
    private static final Pattern NOT_XML =
            Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

    private SvgImage() {}

    /** Drawn once for both forms, which differ in the style element alone. */
    static Svg of(Sheet sheet) {
        Document document = implementation().createDocument(NAMESPACE, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(1);
        context.setIDGenerator(new PrefixedIds(sheet.name()));
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension(sheet.width(), sheet.height()));
        sheet.drawing().draw(graphics);
        Element root = graphics.getRoot();
        root.setAttribute("viewBox", "0 0 " + sheet.width() + " " + sheet.height());
        describe(root, document, sheet);
        StringWriter text = new StringWriter();
        try {
            graphics.stream(root, text, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException("the drawing could not be written", e);
        }
        String all = text.toString();
        String drawn = NOT_XML.matcher(all.substring(all.indexOf("<svg"))).replaceAll("\uFFFD");
        int from = drawn.indexOf("<style");
        int to = drawn.indexOf('>', drawn.indexOf("</style")) + 1;
        String styled = drawn.substring(from, to).replace(STYLE, Typeface.css());
        return new Svg(
                HEAD + drawn.substring(0, from) + styled + drawn.substring(to),
                drawn.substring(0, from) + drawn.substring(to));
    }

    private static void describe(Element root, Document document, Sheet sheet) {
        // The one id that the generator does not ask for.
        ((Element) root.getElementsByTagName("defs").item(0)).setAttribute("id", sheet.name() + "-defs");
        String titleId = sheet.name() + "-title";
        String descriptionId = sheet.name() + "-description";
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", titleId + " " + descriptionId);
        Element title = element(document, "title", titleId, sheet.caption().title());
        Element description = element(document, "desc", descriptionId, sheet.alternativeText());
        root.insertBefore(description, root.getFirstChild());
        root.insertBefore(title, description);
        Element style = document.createElementNS(NAMESPACE, "style");
        style.setTextContent(STYLE);
        root.insertBefore(style, description.getNextSibling());
    }

    private static Element element(Document document, String name, String id, String text) {
        Element element = document.createElementNS(NAMESPACE, name);
        element.setAttribute("id", id);
        element.setTextContent(text);
        return element;
    }

    private static DOMImplementation implementation() {
        try {
            return DOMImplementationRegistry.newInstance().getDOMImplementation("XML 3.0");
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("this Java has no XML document model", e);
        }
    }

    /** Ids that no other picture on the same page has. */
    private static final class PrefixedIds extends SVGIDGenerator {
        private final String name;

        PrefixedIds(String name) {
            this.name = name;
        }

        @Override
        public String generateID(String prefix) {
            return name + "-" + super.generateID(prefix);
        }
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Writes labels and draws marks by hand on top of a chart, and remembers where it wrote. */
final class Pen {

    /** Which point of a text is given. */
    enum Anchor {
        LEFT,
        MIDDLE,
        RIGHT
    }

    /** A text and the room it takes. */
    record Written(String text, Rectangle2D box) {}

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private final Graphics2D sheet;
    private final List<Written> written = new ArrayList<>();

    Pen(Graphics2D sheet) {
        this.sheet = sheet;
    }

    /** Width of a text (px). */
    static double width(String text, Font font) {
        return font.getStringBounds(text, EXACT).getWidth();
    }

    /** The text, its end replaced by an ellipsis if it is wider than there is room; empty if nothing of it fits. */
    static String fitted(String text, Font font, double room) {
        if (width(text, font) <= room) {
            return text;
        }
        for (int length = text.length() - 1; length > 1; length--) {
            String shorter = text.substring(0, length).strip() + "…";
            if (width(shorter, font) <= room) {
                return shorter;
            }
        }
        return "";
    }

    /** The text in as many lines as it needs, broken between words. */
    static List<String> wrapped(String text, Font font, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, font) > room) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /** Everything written so far. */
    List<Written> written() {
        return Collections.unmodifiableList(written);
    }

    /** Writes a line of text with its base line at {@code y}. */
    void text(String text, Font font, Color color, double x, double y, Anchor anchor) {
        if (text.isEmpty()) {
            return;
        }
        double width = width(text, font);
        double left = switch (anchor) {
            case LEFT -> x;
            case MIDDLE -> x - width / 2;
            case RIGHT -> x - width;
        };
        sheet.setFont(font);
        sheet.setColor(color);
        sheet.drawString(text, (float) left, (float) y);
        double size = font.getSize2D();
        written.add(new Written(text, new Rectangle2D.Double(left, y - 0.8 * size, width, size)));
    }

    /** Writes on a white ground, so that the lines beneath don't disturb. */
    void textOnPaper(String text, Font font, Color color, double x, double y, Anchor anchor) {
        double width = width(text, font);
        double left = anchor == Anchor.LEFT ? x : anchor == Anchor.MIDDLE ? x - width / 2 : x - width;
        double size = font.getSize2D();
        Color paper = Palette.PAPER.color();
        fill(
                new Rectangle2D.Double(left - 2, y - 0.85 * size, width + 4, 1.15 * size),
                new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 215));
        text(text, font, color, x, y, anchor);
    }

    void line(double fromX, double fromY, double toX, double toY, Color color, Stroke stroke) {
        outline(new Line2D.Double(fromX, fromY, toX, toY), color, stroke);
    }

    void outline(Shape shape, Color color, Stroke stroke) {
        sheet.setColor(color);
        sheet.setStroke(stroke);
        sheet.draw(shape);
    }

    void fill(Shape shape, Color color) {
        sheet.setColor(color);
        sheet.fill(shape);
    }

    /** A dot with a white rim. */
    void dot(double x, double y, Color color) {
        Ellipse2D circle = new Ellipse2D.Double(x - 4, y - 4, 8, 8);
        fill(circle, color);
        outline(circle, Palette.PAPER.color(), new BasicStroke(1.2f));
    }

    /** Thin slanting lines over an area. */
    void hatch(Rectangle2D area, Color color) {
        Shape before = sheet.getClip();
        sheet.clip(area);
        double height = area.getHeight();
        for (double x = area.getX() - height; x < area.getMaxX(); x += 7) {
            line(x, area.getMaxY(), x + height, area.getY(), color, HouseStyle.THIN_LINE);
        }
        sheet.setClip(before);
    }
}

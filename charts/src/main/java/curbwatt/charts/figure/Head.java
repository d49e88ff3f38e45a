package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/** Title, subtitle and the key to the lines, at the upper left of a sheet. */
final class Head {

    private static final int MARGIN = 20;
    private static final int TITLE_STEP = 24;
    private static final int LINE_STEP = 18;
    private static final int KEY_STEP = 24;

    /**
     * A line or an area and its name.
     *
     * @param line how the line is drawn; empty: it is an area
     */
    record Key(String name, Color color, Optional<Stroke> line) {

        static Key line(String name, Color color, Stroke stroke) {
            return new Key(name, color, Optional.of(stroke));
        }

        static Key area(String name, Color color) {
            return new Key(name, color, Optional.empty());
        }
    }

    private final List<String> titleLines;
    private final List<String> subtitleLines;
    private final List<Key> keys;

    Head(Caption caption, List<Key> keys, int sheetWidth) {
        Typeface typeface = Typeface.prepare();
        this.titleLines = Pen.wrapped(caption.title(), typeface.strong(HouseStyle.TITLE), sheetWidth - 2.0 * MARGIN);
        this.subtitleLines =
                Pen.wrapped(caption.subtitle(), typeface.regular(HouseStyle.TEXT), sheetWidth - 2.0 * MARGIN);
        this.keys = List.copyOf(keys);
    }

    /** Room that it takes from the upper edge (px). */
    int height() {
        int height = 14 + TITLE_STEP * titleLines.size() + LINE_STEP * subtitleLines.size();
        return keys.isEmpty() ? height + 4 : height + KEY_STEP + 4;
    }

    void write(Pen pen) {
        Typeface typeface = Typeface.prepare();
        double y = 8;
        for (String line : titleLines) {
            y += TITLE_STEP;
            pen.text(line, typeface.strong(HouseStyle.TITLE), Palette.INK.color(), MARGIN, y, Pen.Anchor.LEFT);
        }
        for (String line : subtitleLines) {
            y += LINE_STEP;
            pen.text(line, typeface.regular(HouseStyle.TEXT), Palette.MUTED.color(), MARGIN, y, Pen.Anchor.LEFT);
        }
        writeKeys(pen, y + KEY_STEP);
    }

    private void writeKeys(Pen pen, double y) {
        Font font = Typeface.prepare().regular(HouseStyle.SMALL);
        double x = MARGIN;
        for (Key key : keys) {
            double middle = y - 4;
            if (key.line().isEmpty()) {
                pen.fill(new Rectangle2D.Double(x, middle - 5, 20, 10), key.color());
            } else {
                pen.line(x + 1, middle, x + 19, middle, key.color(), key.line().get());
            }
            pen.text(key.name(), font, Palette.INK.color(), x + 26, y, Pen.Anchor.LEFT);
            x += 26 + Pen.width(key.name(), font) + 18;
        }
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Labels to the right of a panel, each as near to its own height as the others let it. */
final class SideLabels {

    /** Least distance between two base lines (px). */
    static final double STEP = 15;

    private static final double LEADER = 12;

    /** A label that would like to stand at a height. */
    record Label(String text, double heightPx, Color color, boolean strong) {}

    private SideLabels() {}

    /** Room beside a panel in which all texts are whole, between bounds (px). */
    static int room(List<String> texts, int leastPx, int mostPx) {
        Font font = Typeface.prepare().strong(HouseStyle.SMALL);
        double widest =
                texts.stream().mapToDouble(text -> Pen.width(text, font)).max().orElse(0);
        return (int) Math.min(mostPx, Math.max(leastPx, Math.ceil(widest + LEADER + 4)));
    }

    /** Writes the labels beside a panel, cut off where the sheet ends. */
    static void write(Pen pen, Panel panel, List<Label> labels, double roomPx) {
        List<Label> sorted = new ArrayList<>(labels);
        sorted.sort(Comparator.comparing(Label::heightPx));
        List<Double> heights = spread(
                sorted.stream().map(Label::heightPx).toList(),
                panel.area().getY(),
                panel.area().getMaxY());
        double edge = panel.area().getMaxX();
        for (int i = 0; i < sorted.size(); i++) {
            Label label = sorted.get(i);
            Typeface typeface = Typeface.prepare();
            Font font = label.strong() ? typeface.strong(HouseStyle.SMALL) : typeface.regular(HouseStyle.SMALL);
            pen.line(
                    edge + 2,
                    label.heightPx(),
                    edge + LEADER - 2,
                    heights.get(i),
                    label.strong() ? label.color() : Palette.RULE.color(),
                    HouseStyle.THIN_LINE);
            pen.text(
                    Pen.fitted(label.text(), font, roomPx - LEADER - 2),
                    font,
                    label.color(),
                    edge + LEADER,
                    heights.get(i) + 4,
                    Pen.Anchor.LEFT);
        }
    }

    /**
     * Heights at least {@link #STEP} apart, near the wished ones (rising), within the bounds as far as there is
     * room.
     */
    static List<Double> spread(List<Double> wished, double from, double to) {
        List<Double> heights = new ArrayList<>(wished);
        for (int i = 0; i < heights.size(); i++) {
            double least = i == 0 ? from : heights.get(i - 1) + STEP;
            heights.set(i, Math.max(least, heights.get(i)));
        }
        for (int i = heights.size() - 1; i >= 0; i--) {
            double most = i == heights.size() - 1 ? to : heights.get(i + 1) - STEP;
            heights.set(i, Math.min(most, heights.get(i)));
        }
        return heights;
    }
}

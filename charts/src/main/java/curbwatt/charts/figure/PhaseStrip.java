package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.scene.Phase;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;

/**
 * The phases of a scene as shaded columns, each with its name on a strip above. The strip has a second line where a
 * name
 * does not fit into one.
 */
final class PhaseStrip {

    private static final int LOW = 20;
    private static final int HIGH = 36;
    private static final int LINE_STEP = 14;

    /** Size of names that are still too wide in two lines (px). */
    private static final float TINY = 10;

    private final List<Span> spans;
    private final TimeScale scale;

    private record Span(String name, List<String> doing, double fromS, double toS, Color ground) {}

    PhaseStrip(List<Phase> phases, List<PhaseSummary> summaries, TimeScale scale) {
        this.scale = scale;
        List<Span> all = new ArrayList<>();
        double fromS = 0;
        for (int i = 0; i < phases.size(); i++) {
            Phase phase = phases.get(i);
            boolean stranded = phase.mode().isRunning()
                    && i < summaries.size()
                    && !summaries.get(i).engineRan();
            EngineMode mode = stranded ? EngineMode.OFF : phase.mode();
            double toS = Math.min(scale.durationS(), fromS + phase.durationS());
            all.add(new Span(
                    phase.name(),
                    stranded ? List.of("engine did not start", "no start") : doing(mode),
                    fromS,
                    toS,
                    ground(mode)));
            fromS = toS;
        }
        this.spans = List.copyOf(all);
    }

    /** Shades the columns behind a plot's data. */
    void shade(XYPlot plot) {
        for (Span span : spans) {
            if (!span.ground().equals(Palette.PAPER.color())) {
                IntervalMarker column = new IntervalMarker(scale.at(span.fromS()), scale.at(span.toS()));
                column.setPaint(span.ground());
                column.setAlpha(1);
                plot.addDomainMarker(column, Layer.BACKGROUND);
            }
        }
    }

    /**
     * Height of the strip (px).
     *
     * @param widthPx its width (px)
     */
    int height(double widthPx) {
        double pxPerS = widthPx / scale.durationS();
        boolean oneLine = spans.stream()
                .allMatch(span -> Pen.width(span.name(), strong()) <= room(pxPerS * (span.toS() - span.fromS())));
        return oneLine ? LOW : HIGH;
    }

    /** Writes the strip with its upper edge at {@code top}, and draws the borders between phases through the panels. */
    void write(Pen pen, List<Panel> panels, double top) {
        Panel first = panels.get(0);
        int height = height(first.area().getWidth());
        for (Span span : spans) {
            double left = first.x(scale.at(span.fromS()));
            double right = first.x(scale.at(span.toS()));
            Rectangle2D box = new Rectangle2D.Double(left, top, right - left, height);
            pen.fill(box, span.ground());
            pen.outline(box, Palette.RULE.color(), HouseStyle.THIN_LINE);
            if (height == LOW) {
                writeInOneLine(pen, span, left + 6, room(right - left), top + height - 6);
            } else {
                writeInTwoLines(pen, span, left + 6, room(right - left), top + LINE_STEP);
            }
            if (span.fromS() > 0) {
                panels.forEach(panel -> pen.line(
                        left,
                        panel.area().getY(),
                        left,
                        panel.area().getMaxY(),
                        Palette.RULE.color(),
                        HouseStyle.THIN_LINE));
            }
        }
    }

    private static void writeInOneLine(Pen pen, Span span, double x, double room, double y) {
        double nameWidth = Pen.width(span.name(), strong());
        String doing = doing(span, room - nameWidth - 8);
        pen.text(Pen.fitted(span.name(), strong(), room), strong(), Palette.INK.color(), x, y, Pen.Anchor.LEFT);
        pen.text(doing, regular(), Palette.MUTED.color(), x + nameWidth + 8, y, Pen.Anchor.LEFT);
    }

    private static void writeInTwoLines(Pen pen, Span span, double x, double room, double y) {
        if (Pen.width(span.name(), strong()) <= room) {
            pen.text(span.name(), strong(), Palette.INK.color(), x, y, Pen.Anchor.LEFT);
            pen.text(doing(span, room), regular(), Palette.MUTED.color(), x, y + LINE_STEP, Pen.Anchor.LEFT);
            return;
        }
        Font tiny = Typeface.prepare().strong(TINY);
        Font font = fits(Pen.wrapped(span.name(), strong(), room), strong(), room) ? strong() : tiny;
        List<String> lines = Pen.wrapped(span.name(), font, room);
        if (lines.stream().limit(2).anyMatch(line -> Pen.width(line, font) > room)) {
            // a word of a name says something else than the name
            pen.text(Pen.fitted(span.name(), font, room), font, Palette.INK.color(), x, y, Pen.Anchor.LEFT);
            return;
        }
        for (int i = 0; i < Math.min(2, lines.size()); i++) {
            String line = i == 1 && lines.size() > 2 ? lines.get(i) + "…" : lines.get(i);
            pen.text(Pen.fitted(line, font, room), font, Palette.INK.color(), x, y + i * LINE_STEP, Pen.Anchor.LEFT);
        }
    }

    private static boolean fits(List<String> lines, Font font, double room) {
        return lines.size() <= 2 && lines.stream().allMatch(line -> Pen.width(line, font) <= room);
    }

    /** What the vehicle does, in as many words as there is room for, unless the name says it. */
    private static String doing(Span span, double room) {
        return span.doing().stream()
                .filter(text -> Pen.width(text, regular()) <= room)
                .filter(text -> !span.name().toLowerCase(Locale.ROOT).contains(text))
                .findFirst()
                .orElse("");
    }

    private static double room(double widthPx) {
        return widthPx - 10;
    }

    private static Font strong() {
        return Typeface.prepare().strong(HouseStyle.SMALL);
    }

    private static Font regular() {
        return Typeface.prepare().regular(HouseStyle.SMALL);
    }

    /** The same in fewer and fewer letters. */
    private static List<String> doing(EngineMode mode) {
        return switch (mode) {
            case DRIVING -> List.of("driving");
            case IDLING -> List.of("idling");
            case OFF -> List.of("engine off", "off");
            case PARKED -> List.of("parked");
        };
    }

    private static Color ground(EngineMode mode) {
        return switch (mode) {
            case DRIVING, IDLING -> Palette.PAPER.color();
            case OFF -> Palette.ENGINE_OFF.color();
            case PARKED -> Palette.PARKED.color();
        };
    }
}

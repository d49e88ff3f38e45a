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

/** The phases of a scene as shaded columns, each with its name on a strip above. */
final class PhaseStrip {

    /** Height of the strip (px). */
    static final int HEIGHT = 20;

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
     * Writes the strip with its lower edge at {@code bottom}, and draws the borders between phases through the
     * panels.
     */
    void write(Pen pen, List<Panel> panels, double bottom) {
        Panel first = panels.get(0);
        Font strong = Typeface.prepare().strong(HouseStyle.SMALL);
        for (Span span : spans) {
            double left = first.x(scale.at(span.fromS()));
            double right = first.x(scale.at(span.toS()));
            Rectangle2D box = new Rectangle2D.Double(left, bottom - HEIGHT, right - left, HEIGHT);
            pen.fill(box, span.ground());
            pen.outline(box, Palette.RULE.color(), HouseStyle.THIN_LINE);
            writeName(pen, span, left + 6, right - left - 10, bottom - 6, strong);
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

    private static void writeName(Pen pen, Span span, double x, double room, double y, Font strong) {
        Font regular = Typeface.prepare().regular(HouseStyle.SMALL);
        double nameWidth = Pen.width(span.name(), strong);
        String doing = span.doing().stream()
                .filter(text -> nameWidth + 8 + Pen.width(text, regular) <= room)
                .filter(text -> !span.name().toLowerCase(Locale.ROOT).contains(text))
                .findFirst()
                .orElse("");
        pen.text(Pen.fitted(span.name(), strong, room), strong, Palette.INK.color(), x, y, Pen.Anchor.LEFT);
        pen.text(doing, regular, Palette.MUTED.color(), x + nameWidth + 8, y, Pen.Anchor.LEFT);
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

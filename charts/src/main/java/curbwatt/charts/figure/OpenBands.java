package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.event.Event;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** When each of several cutoffs and shedding steps was open: a thin band for each, with its name to the right. */
final class OpenBands {

    private static final int MOST_ROWS = 4;
    private static final double ROW_HEIGHT = 15;
    private static final double BAND_HEIGHT = 7;
    private static final double LEADER = 12;

    /** Spans nearer to each other than this are drawn as one, so that a contact that chatters stays light (px). */
    private static final double NEAR_PX = 1;

    private final List<Row> rows;
    private final TimeScale scale;

    private record Span(double fromS, double toS) {}

    private record Row(String name, List<Span> spans) {
        boolean opened() {
            return !spans.isEmpty();
        }

        double openS() {
            return spans.stream().mapToDouble(span -> span.toS() - span.fromS()).sum();
        }
    }

    private OpenBands(List<Row> rows, TimeScale scale) {
        this.rows = rows;
        this.scale = scale;
    }

    /** Bands of the devices, those that opened before the others; none with a single device, or where all stay closed. */
    static OpenBands of(RunStory story, TimeScale scale) {
        List<LowVoltageCutoff> devices = story.scenario().vehicle().cutoffs();
        List<Row> rows = devices.stream()
                .map(device -> new Row(
                        device.name(), spans(device.name(), story.result().events(), scale.durationS())))
                .sorted(Comparator.comparing(row -> !row.opened()))
                .limit(MOST_ROWS)
                .toList();
        boolean shown = devices.size() > 1 && rows.stream().anyMatch(Row::opened);
        return new OpenBands(shown ? rows : List.of(), scale);
    }

    /** Room that they take (px). */
    int height() {
        return rows.isEmpty() ? 0 : (int) (rows.size() * ROW_HEIGHT + 2);
    }

    List<String> names() {
        return rows.stream().map(Row::name).toList();
    }

    /** What the band's colour means. */
    List<Head.Key> keys() {
        return rows.isEmpty() ? List.of() : List.of(Head.Key.area("contact open", Palette.ALARM.color()));
    }

    /** For how long each was open; empty where there is no band. */
    String inWords() {
        return rows.stream()
                .map(row -> " " + row.name()
                        + (row.opened() ? " is open for " + scale.clock(row.openS()) : " stays closed") + ".")
                .collect(Collectors.joining());
    }

    /** Draws them beneath a panel. */
    void write(Pen pen, Panel panel, double roomPx) {
        double left = panel.area().getX();
        double right = panel.area().getMaxX();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double middle = panel.area().getMaxY() + (i + 1) * ROW_HEIGHT;
            pen.line(left, middle, right, middle, Palette.HAIRLINE.color(), HouseStyle.THIN_LINE);
            for (Span span : drawn(row, panel)) {
                double from = panel.x(scale.at(span.fromS()));
                double width = Math.max(NEAR_PX, panel.x(scale.at(span.toS())) - from);
                pen.fill(
                        new Rectangle2D.Double(from, middle - BAND_HEIGHT / 2, width, BAND_HEIGHT),
                        Palette.ALARM.color());
            }
            Font font = Typeface.prepare().regular(HouseStyle.SMALL);
            Color color = row.opened() ? Palette.ALARM.color() : Palette.MUTED.color();
            String name = Pen.fitted(row.name(), font, roomPx - LEADER - 2);
            pen.text(name, font, color, right + LEADER, middle + 4, Pen.Anchor.LEFT);
        }
    }

    private List<Span> drawn(Row row, Panel panel) {
        double nearS = NEAR_PX * scale.durationS() / panel.area().getWidth();
        List<Span> drawn = new ArrayList<>();
        for (Span span : row.spans()) {
            int last = drawn.size() - 1;
            if (last >= 0 && span.fromS() - drawn.get(last).toS() < nearS) {
                drawn.set(last, new Span(drawn.get(last).fromS(), span.toS()));
            } else {
                drawn.add(span);
            }
        }
        return drawn;
    }

    private static List<Span> spans(String device, List<Event> events, double endS) {
        List<Span> spans = new ArrayList<>();
        double openedS = Double.NaN;
        for (Event event : events) {
            if (!event.subject().equals(device)) {
                continue;
            }
            switch (event.kind()) {
                case CUTOFF_TRIPPED, RUN_TIME_LIMIT_REACHED -> openedS = event.timeS();
                case CUTOFF_RECLOSED -> {
                    if (!Double.isNaN(openedS)) {
                        spans.add(new Span(openedS, event.timeS()));
                    }
                    openedS = Double.NaN;
                }
                default -> {}
            }
        }
        if (!Double.isNaN(openedS)) {
            spans.add(new Span(openedS, endS));
        }
        return spans;
    }
}

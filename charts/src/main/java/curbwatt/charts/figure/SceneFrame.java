package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.charts.style.Typeface;
import java.awt.Font;
import java.util.Comparator;
import java.util.List;

/** What every picture over a scene's time has above its panels: the strip of phases and the labels of events. */
final class SceneFrame {

    private static final int LANE_HEIGHT = 16;
    private static final int MOST_LANES = 8;
    private static final String MORE_ROOM = "+999 more";

    private final TimeScale scale;
    private final PhaseStrip strip;
    private final List<EventLabel> events;
    private final List<LabelLanes.Place> places;
    private final int stripHeight;

    /**
     * Finds room for the labels.
     *
     * @param events the marks, the ones that matter most first
     * @param most how many may be labelled
     * @param leftPx left edge of the panels
     * @param rightPx right edge of the panels
     */
    SceneFrame(TimeScale scale, PhaseStrip strip, List<EventLabel> events, int most, double leftPx, double rightPx) {
        this.scale = scale;
        this.strip = strip;
        this.events = List.copyOf(events);
        double edgePx = events.size() > most ? rightPx - Pen.width(MORE_ROOM, font()) - 8 : rightPx;
        this.stripHeight = strip.height(rightPx - leftPx);
        this.places = places(most, leftPx, edgePx, (rightPx - leftPx) / scale.durationS());
    }

    /**
     * Places for the marks that matter most, as many as find room together: one that matters less yields. Taken in
     * order
     * of time the lanes fill like a staircase with the texts to the right; taken backwards, with the texts to the left,
     * which helps where much happens at the end.
     */
    private List<LabelLanes.Place> places(int most, double leftPx, double edgePx, double pxPerS) {
        Comparator<EventLabel> inTime = Comparator.comparing(EventLabel::timeS);
        for (int count = Math.min(most, events.size()); count > 0; count--) {
            for (Comparator<EventLabel> order : List.of(inTime, inTime.reversed())) {
                List<EventLabel> labelled =
                        events.subList(0, count).stream().sorted(order).toList();
                List<LabelLanes.Wish> wishes = labelled.stream()
                        .map(label -> new LabelLanes.Wish(
                                leftPx + pxPerS * label.timeS(), Pen.width(label.text(scale), font())))
                        .toList();
                List<LabelLanes.Place> found = LabelLanes.places(wishes, leftPx, edgePx, MOST_LANES);
                if (found.size() == count) {
                    return found.stream()
                            .map(place -> place.of(events.indexOf(labelled.get(place.index()))))
                            .toList();
                }
            }
        }
        return List.of();
    }

    /** Room that it takes above the first panel (px). */
    int height() {
        return stripHeight + lanes() * LANE_HEIGHT + 8;
    }

    void write(Pen pen, List<Panel> panels) {
        double top = panels.get(0).area().getY() - height();
        strip.write(pen, panels, top);
        for (EventLabel event : events) {
            markAtAxis(pen, panels, event);
        }
        for (LabelLanes.Place place : places) {
            writeLabel(pen, panels, place, top + stripHeight + 4);
        }
        int left = events.size() - places.size();
        if (left > 0) {
            double right = panels.get(0).area().getMaxX();
            pen.text(
                    "+" + left + " more",
                    font(),
                    Palette.MUTED.color(),
                    right,
                    top + stripHeight + 4 + LANE_HEIGHT - 4,
                    Pen.Anchor.RIGHT);
        }
    }

    private void writeLabel(Pen pen, List<Panel> panels, LabelLanes.Place place, double lanesTop) {
        EventLabel event = events.get(place.index());
        double base = lanesTop + (place.lane() + 1) * LANE_HEIGHT - 4;
        double bottom = panels.get(panels.size() - 1).area().getMaxY();
        pen.line(place.anchorPx(), base - 9, place.anchorPx(), bottom, event.color(), HouseStyle.THIN_LINE);
        pen.text(event.text(scale), font(), event.color(), place.fromPx(), base, Pen.Anchor.LEFT);
    }

    /** A short tick on the time axis, so that an event without a label is not lost. */
    private void markAtAxis(Pen pen, List<Panel> panels, EventLabel event) {
        Panel last = panels.get(panels.size() - 1);
        double x = last.x(scale.at(event.timeS()));
        double bottom = last.area().getMaxY();
        pen.line(x, bottom - 6, x, bottom, event.color(), HouseStyle.MAIN_LINE);
    }

    private int lanes() {
        int used = places.stream().mapToInt(LabelLanes.Place::lane).max().orElse(-1) + 1;
        return Math.max(used, events.size() > places.size() ? 1 : 0);
    }

    private static Font font() {
        return Typeface.prepare().strong(HouseStyle.SMALL);
    }
}

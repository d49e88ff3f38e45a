package curbwatt.engine.simulation.book;

import curbwatt.engine.result.LinkSummary;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.part.Parabola;

/** Adds up the link. */
final class LinkBook {

    private static final double SECONDS_PER_HOUR = 3600;

    private final String name;
    private final LinkState state;
    private double closedS;
    private double toEquipmentAs;
    private double toStarterAs;
    private double peakA;

    LinkBook(String name, LinkState state) {
        this.name = name;
        this.state = state;
    }

    void add(double lengthS, OperatingPoint start, OperatingPoint end) {
        if (state.isClosed()) {
            closedS += lengthS;
        }
        double meanA = 0.5 * (start.linkOutA + end.linkOutA);
        toEquipmentAs += lengthS * Math.max(0, meanA);
        toStarterAs += lengthS * Math.max(0, -meanA);
    }

    /** Whether an instant on the parabola through three might be one to note. */
    boolean mayNote(OperatingPoint start, OperatingPoint middle, OperatingPoint end) {
        return Parabola.ceiling(start.linkOutA, middle.linkOutA, end.linkOutA) > peakA
                || Parabola.floor(start.linkOutA, middle.linkOutA, end.linkOutA) < -peakA;
    }

    /** Notes an instant. */
    void note(OperatingPoint point) {
        peakA = Math.max(peakA, Math.abs(point.linkOutA));
    }

    public LinkSummary summary() {
        return new LinkSummary(name, closedS, toEquipmentAs / SECONDS_PER_HOUR, toStarterAs / SECONDS_PER_HOUR, peakA);
    }
}

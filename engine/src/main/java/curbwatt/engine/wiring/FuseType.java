package curbwatt.engine.wiring;

import java.util.List;

/**
 * Make of a vehicle fuse: the ratings sold, and between which times it opens at a multiple of its rating.
 *
 * <p>Times of ISO 8820-3 and DIN 72581-3 as a public data sheet and a public fuse page have them; between points a
 * straight line,
 * both axes logarithmic. At its rating a fuse lasts 100 h, below it for ever. Beyond the last point the heat I²t stays
 * the same,
 * as it does when nothing has time to flow off.
 */
public enum FuseType {
    /** Ordinary blade, ISO 8820-3 type C. Times of one maker's 35 to 40 A rows; those at 1.6 of its 10 A part. */
    BLADE(
            List.of(1.0, 2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0),
            new LogLogTable(1, 360_000, 1.35, 0.75, 1.6, 0.25, 2, 0.15, 3.5, 0.08, 35, 0.0008),
            new LogLogTable(1.35, 600, 1.6, 50, 2, 5, 3.5, 0.5, 6, 0.15, 60, 0.0015)),
    /** Small blade, ISO 8820-3 type F. Times of {@link #BLADE}. */
    MINI(List.of(2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0), BLADE.earliestS, BLADE.latestS),
    /** High-current blade, ISO 8820-3 type E, DIN 72581-3 form E. At twice the rating 60 s; a data sheet has 50 s. */
    MAXI(
            List.of(20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0),
            new LogLogTable(1, 360_000, 1.35, 60, 2, 2, 3.5, 0.2, 6, 0.04, 60, 0.0004),
            new LogLogTable(1.35, 1800, 2, 60, 3.5, 7, 6, 1, 60, 0.01));

    @SuppressWarnings("ImmutableEnumChecker") // all of them are
    private final List<Double> ratingsA;

    @SuppressWarnings("ImmutableEnumChecker")
    private final LogLogTable earliestS;

    @SuppressWarnings("ImmutableEnumChecker")
    private final LogLogTable latestS;

    @SuppressWarnings("ImmutableEnumChecker")
    private final LogLogTable slightOverloadS;

    FuseType(List<Double> ratingsA, LogLogTable earliestS, LogLogTable latestS) {
        this.ratingsA = ratingsA;
        this.earliestS = earliestS;
        this.latestS = latestS;
        double surely = latestS.first();
        slightOverloadS = new LogLogTable(1, earliestS.value(1), surely, middle(surely));
    }

    /** Returns the ratings sold, A, smallest first. Range from public rating lists, steps common practice. */
    public List<Double> ratingsA() {
        return ratingsA;
    }

    /**
     * Returns the time before which no good fuse opens, s; infinity up to the rating.
     *
     * @param multiple current over the rating
     */
    public double earliestS(double multiple) {
        return multiple > 1 ? earliestS.value(multiple) : Double.POSITIVE_INFINITY;
    }

    /** Returns the time by which every good fuse has opened, s; infinity below 1.35 times the rating. */
    public double latestS(double multiple) {
        return multiple >= latestS.first() ? latestS.value(multiple) : Double.POSITIVE_INFINITY;
    }

    /**
     * Returns the geometric mean of the earliest and the latest time, s: the middle of the published band on its
     * logarithmic axis.
     * Where no latest time is published, below 1.35 times the rating, a line from 100 h at the rating to the band's
     * first middle.
     */
    public double typicalS(double multiple) {
        if (multiple <= 1) {
            return Double.POSITIVE_INFINITY;
        }
        return multiple < latestS.first() ? slightOverloadS.value(multiple) : middle(multiple);
    }

    private double middle(double multiple) {
        return Math.sqrt(earliestS.value(multiple) * latestS.value(multiple));
    }
}

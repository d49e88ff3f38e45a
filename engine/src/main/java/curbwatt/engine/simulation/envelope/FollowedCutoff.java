package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.device.CutoffState;
import curbwatt.engine.simulation.network.SenseTap;

/**
 * One cutoff that filters, followed along a long step: what goes into its filter in the segment in hand, and what comes out.
 *
 * <p>As long as its reading stays plainly between two of the levels that it compares with, it need not be shown the segments.
 */
final class FollowedCutoff {

    /** A reading nearer to a level than this, or than its input moves in the segment, may come to it (V). */
    private static final double PLAINLY_V = 1e-7;

    private final CutoffState cutoff;
    private final SenseTap tap;
    private final Filter filter;
    private final double errorV;
    /** The ripple that its input rides on; null: none. */
    private Ripple ripple;

    private double readingV;
    private double inV;
    private double lastInV;
    private double nextV;
    /** The levels next to its reading (V). */
    private double levelBelowV;

    private double levelAboveV;

    FollowedCutoff(CutoffState cutoff, SenseTap tap, Filter filter) {
        this.cutoff = cutoff;
        this.tap = tap;
        this.filter = filter;
        errorV = cutoff.settings.sensorErrorV();
    }

    /** Whether it has read anything yet. */
    boolean reads() {
        return !Double.isNaN(cutoff.filteredV());
    }

    void begin(LongStep step, Ripples ripples) {
        filter.layParabolas(step, tap, errorV);
        ripple = ripples.at(tap);
    }

    /** Takes up its reading; how long nothing happens if it stays where it is (s). */
    double turn(boolean engineRuns) {
        readingV = cutoff.filteredV();
        levelBelowV = cutoff.levelBelowV(readingV);
        levelAboveV = cutoff.levelAboveV(readingV);
        return cutoff.calmForS(readingV, readingV, engineRuns);
    }

    /** Looks at a segment; whether its reading stays plainly between the same levels. */
    boolean staysPlain(Piece piece) {
        int combination = piece.combination;
        double lengthS = piece.lengthS;
        inV = filter.inV(combination, piece.fromShare);
        lastInV = filter.inV(combination, piece.toShare);
        if (ripple != null) {
            inV += ripple.inV(combination, 0);
            lastInV += ripple.inV(combination, lengthS);
        }
        double movedV = lastInV - inV;
        double lagV = movedV / lengthS * filter.timeConstantS();
        double keep = piece.isWhole ? filter.keeps(piece.segment) : Math.exp(-lengthS / filter.timeConstantS());
        nextV = lastInV - lagV + (readingV - inV + lagV) * keep;
        double nearV = PLAINLY_V + Math.abs(movedV);
        return Math.min(readingV, nextV) - nearV >= levelBelowV && Math.max(readingV, nextV) + nearV < levelAboveV;
    }

    /** Goes to the end of the segment looked at. */
    void pass() {
        readingV = nextV;
    }

    /** Shows it the segment looked at; whether it acts in it. */
    boolean acts(double lengthS, boolean engineRuns) {
        cutoff.sense(lengthS, inV - errorV, lastInV - errorV);
        return cutoff.nextActionS(engineRuns) <= lengthS;
    }

    /** Lets it take note of the segment that it was shown. */
    void advance(boolean engineRuns) {
        cutoff.advance(engineRuns);
    }

    /** Tells it that it has been reading something on this side of its levels for so long. */
    void tell(double durationS, boolean engineRuns) {
        cutoff.advanceCalm(durationS, readingV, readingV, engineRuns);
    }
}

package curbwatt.engine.simulation.envelope;

import java.util.Arrays;

/**
 * When each combination is lit for the first and for the last time in a stretch, and for which share of it.
 *
 * <p>Voltages drift along a long step. Their extremes are those of instants that there were: not that of a combination at the
 * step's end, which was last lit half a minute before.
 */
final class Occurrences {

    private double[] firstS = new double[0];
    private double[] lastS = new double[0];
    private double[] shares = new double[0];
    private final Segments told = new Segments();

    /** Looks at a stretch. */
    void look(FlashPattern pattern, double fromS, double toS) {
        if (firstS.length != pattern.size()) {
            firstS = new double[pattern.size()];
            lastS = new double[pattern.size()];
            shares = new double[pattern.size()];
        }
        boolean manyCycles = !pattern.isSteady() && toS - fromS > pattern.cycleS();
        told.take(pattern, fromS, manyCycles ? fromS + pattern.cycleS() : toS);
        System.arraycopy(told.firstS, 0, firstS, 0, firstS.length);
        if (manyCycles) {
            lookBack(pattern, toS);
            pattern.shares(fromS, toS, shares);
        } else {
            System.arraycopy(told.lastS, 0, lastS, 0, lastS.length);
            told.shares(shares);
        }
    }

    /** What repeats is lit for the last time in the last of its cycles. */
    private void lookBack(FlashPattern pattern, double toS) {
        Arrays.fill(lastS, Double.NaN);
        pattern.seek(toS - Envelope.BEFORE_EDGE_S);
        double endS = toS;
        for (int s = 0; s < pattern.segments(); s++) {
            int combination = pattern.combination();
            if (Double.isNaN(lastS[combination])) {
                lastS[combination] = endS;
            }
            endS = pattern.startS();
            pattern.previous();
        }
    }

    /** Whether a combination is lit at all in the stretch looked at. */
    boolean occurs(int combination) {
        return firstS[combination] <= lastS[combination];
    }

    /** Share of the stretch for which a combination is lit. */
    double share(int combination) {
        return shares[combination];
    }

    /** Beginning of its first time in the stretch (s). */
    double firstS(int combination) {
        return firstS[combination];
    }

    /** End of its last time in the stretch (s). */
    double lastS(int combination) {
        return lastS[combination];
    }
}

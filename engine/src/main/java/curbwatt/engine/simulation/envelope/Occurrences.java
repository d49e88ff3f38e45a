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
        int size = pattern.size();
        if (firstS.length != size) {
            firstS = new double[size];
            lastS = new double[size];
            shares = new double[size];
        }
        Arrays.fill(firstS, Double.NaN);
        Arrays.fill(lastS, Double.NaN);
        Arrays.fill(shares, 0);
        boolean manyCycles = !pattern.isSteady() && toS - fromS > pattern.cycleS();
        pattern.tell(fromS, manyCycles ? fromS + pattern.cycleS() : toS, told);
        double atS = fromS;
        for (int s = 0; s < told.size; s++) {
            int combination = told.combination[s];
            if (Double.isNaN(firstS[combination])) {
                firstS[combination] = atS;
            }
            atS += told.lengthS[s];
            lastS[combination] = atS;
            shares[combination] += told.lengthS[s] / (toS - fromS);
        }
        if (manyCycles) {
            lookBack(pattern, toS);
            pattern.shares(fromS, toS, shares);
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

package curbwatt.engine.simulation.envelope;

import java.util.Arrays;

/**
 * When each combination is lit for the first and for the last time in a stretch.
 *
 * <p>Voltages drift along a long step. Their extremes are those of instants that there were: not that of a combination at the
 * step's end, which was last lit half a minute before.
 */
final class Occurrences {

    private double[] firstS = new double[0];
    private double[] lastS = new double[0];

    /** Looks at a stretch. */
    void look(FlashPattern pattern, double fromS, double toS) {
        int size = pattern.size();
        if (firstS.length != size) {
            firstS = new double[size];
            lastS = new double[size];
        }
        if (pattern.isSteady()) {
            firstS[0] = fromS;
            lastS[0] = toS;
            return;
        }
        Arrays.fill(firstS, Double.NaN);
        Arrays.fill(lastS, Double.NaN);
        pattern.seek(fromS);
        double startS = fromS;
        for (int s = 0; s < pattern.segments() && startS < toS; s++) {
            int combination = pattern.combination();
            if (Double.isNaN(firstS[combination])) {
                firstS[combination] = startS;
            }
            startS = pattern.endS();
            lastS[combination] = Math.min(startS, toS);
            pattern.next();
        }
        if (startS < toS) {
            lookBack(pattern, toS);
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

    /** Beginning of its first time in the stretch (s). */
    double firstS(int combination) {
        return firstS[combination];
    }

    /** End of its last time in the stretch (s). */
    double lastS(int combination) {
        return lastS[combination];
    }
}

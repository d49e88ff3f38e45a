package curbwatt.engine.simulation.envelope;

import java.util.Arrays;

/**
 * The segments of a time, one after the other: which combination is lit, and for how long; and how long each combination is lit in
 * all, when first and when last. Used again for other times.
 */
final class Segments {

    private static final double SAME_TIME_S = 1e-6;

    int size;
    int[] combination = new int[64];
    double[] lengthS = new double[64];
    /** Time for which each combination is lit (s). */
    double[] spentS = new double[0];
    /** Beginning of each combination's first time (s); not a number: it is not lit. */
    double[] firstS = new double[0];
    /** End of each combination's last time (s). */
    double[] lastS = new double[0];

    private FlashPattern pattern;
    private double fromS;
    private double toS;

    /** Takes up those of a time, the first and the last cut to it (s). */
    void take(FlashPattern next, double beginsS, double endsS) {
        if (next.equals(pattern) && beginsS == fromS && endsS == toS) {
            return;
        }
        pattern = next;
        fromS = beginsS;
        toS = endsS;
        clear();
        if (pattern.isSteady()) {
            put(0, fromS, toS);
            return;
        }
        pattern.seek(fromS);
        int place = pattern.segment();
        double atS = fromS;
        for (int turn = 0; toS - atS > SAME_TIME_S; turn++) {
            double turnS = pattern.turnS(turn);
            int stop = pattern.firstEndingFrom(place, toS - turnS);
            atS = putWhole(place, stop, turnS, atS);
            if (stop < pattern.segments() && toS - atS > SAME_TIME_S) {
                put(pattern.combination(stop), atS, toS);
                atS = toS;
            }
            place = 0;
        }
    }

    private void clear() {
        size = 0;
        if (spentS.length != pattern.size()) {
            spentS = new double[pattern.size()];
            firstS = new double[pattern.size()];
            lastS = new double[pattern.size()];
        }
        Arrays.fill(spentS, 0);
        Arrays.fill(firstS, Double.NaN);
        Arrays.fill(lastS, Double.NaN);
    }

    /** Puts down whole segments of a cycle, the first of them from a time on; where the last ends (s). */
    private double putWhole(int from, int to, double turnS, double beginsS) {
        makeRoom(to - from + 1);
        int[] lit = pattern.combinations();
        double[] endS = pattern.endsInCycleS();
        double atS = beginsS;
        for (int s = from; s < to; s++) {
            double untilS = turnS + endS[s];
            put(lit[s], atS, untilS);
            atS = untilS;
        }
        return atS;
    }

    private void makeRoom(int more) {
        if (size + more > combination.length) {
            int room = Math.max(2 * combination.length, size + more);
            combination = Arrays.copyOf(combination, room);
            lengthS = Arrays.copyOf(lengthS, room);
        }
    }

    private void put(int lit, double beginsS, double endsS) {
        combination[size] = lit;
        lengthS[size] = endsS - beginsS;
        size++;
        spentS[lit] += endsS - beginsS;
        if (Double.isNaN(firstS[lit])) {
            firstS[lit] = beginsS;
        }
        lastS[lit] = endsS;
    }

    /** Shares of the time that the combinations have. */
    void shares(double[] shares) {
        for (int k = 0; k < shares.length; k++) {
            shares[k] = spentS[k] / (toS - fromS);
        }
    }
}

package curbwatt.engine.simulation.envelope;

import java.util.Arrays;

/** The segments of a time, one after the other: which combination is lit, and for how long. Used again for other times. */
final class Segments {

    int size;
    int[] combination = new int[64];
    double[] lengthS = new double[64];
    private FlashPattern pattern;
    private double fromS;
    private double toS;

    /** Begins with none, of a time of a pattern (s); false: it holds those already. */
    boolean begin(FlashPattern next, double beginsS, double endsS) {
        if (next.equals(pattern) && beginsS == fromS && endsS == toS) {
            return false;
        }
        pattern = next;
        fromS = beginsS;
        toS = endsS;
        size = 0;
        return true;
    }

    void add(int lit, double durationS) {
        if (size == combination.length) {
            combination = Arrays.copyOf(combination, 2 * size);
            lengthS = Arrays.copyOf(lengthS, 2 * size);
        }
        combination[size] = lit;
        lengthS[size] = durationS;
        size++;
    }
}

package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.FlashLayout;
import java.util.Arrays;
import java.util.List;

/**
 * The segments that several flashers make together: between two instants at which one of them changes, one combination of their
 * states holds.
 *
 * <p>A combination is written as one number, a digit for each flasher, and known by the place at which it was first met.
 */
final class FlashMerge {

    /** More do not fit in the digits of a whole number of 64 bits. */
    static final int MOST_FLASHERS = 39;

    /** Changes within this time are one instant, as for the loads (ns). */
    private static final long ONE_INSTANT_NS = 1000;

    /** 2⁶⁴ over the golden ratio, odd: multiples of it scatter widely. */
    private static final long SCATTERS = 0x9E37_79B9_7F4A_7C15L;

    private final Flasher[] flashers;
    private final long[] weights;
    private final int[] states;
    private final long[] nextNs;
    private long code;
    /** Codes met, by place. */
    private long[] codes = new long[8];

    private int met;
    /** Places by a hash of their codes, one more than they are; 0: none. */
    private int[] table = new int[4 * codes.length];

    private long[] endNs = new long[64];
    private int[] combination = new int[64];
    private int segments;

    FlashMerge(List<Flasher> together) {
        flashers = together.toArray(Flasher[]::new);
        weights = new long[flashers.length];
        states = new int[flashers.length];
        nextNs = new long[flashers.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = i == 0 ? 1 : weights[i - 1] * Flasher.STATES;
        }
    }

    /**
     * Lays out the segments of a time.
     *
     * @param isWindow whether a segment begins with the time; otherwise the first begins at the first change, and the last goes on
     *     until then
     */
    void layOut(long fromNs, long lengthNs, boolean isWindow) {
        met = 0;
        Arrays.fill(table, 0);
        segments = 0;
        seek(fromNs);
        long firstNs = isWindow ? fromNs : earliestNs();
        long startNs = firstNs;
        while (startNs < fromNs + lengthNs) {
            startNs = passTo(startNs + ONE_INSTANT_NS);
            add(Math.min(startNs, firstNs + lengthNs), place());
        }
        endNs[segments - 1] = firstNs + lengthNs;
    }

    private void seek(long timeNs) {
        code = 0;
        for (int i = 0; i < flashers.length; i++) {
            flashers[i].seek(timeNs);
            nextNs[i] = flashers[i].nextNs();
            states[i] = flashers[i].state();
            code += weights[i] * states[i];
        }
    }

    private long earliestNs() {
        long earliestNs = Long.MAX_VALUE;
        for (long ownNs : nextNs) {
            earliestNs = Math.min(earliestNs, ownNs);
        }
        return earliestNs;
    }

    /** Passes all that changes up to a time; the next instant at which something does (ns). */
    private long passTo(long timeNs) {
        long earliestNs = Long.MAX_VALUE;
        for (int i = 0; i < flashers.length; i++) {
            long ownNs = nextNs[i];
            if (ownNs <= timeNs) {
                ownNs = flashers[i].passTo(timeNs);
                nextNs[i] = ownNs;
                int state = flashers[i].state();
                code += weights[i] * (state - states[i]);
                states[i] = state;
            }
            earliestNs = Math.min(earliestNs, ownNs);
        }
        return earliestNs;
    }

    /** Place of the present combination among those met. */
    private int place() {
        int at = slot(code);
        if (table[at] > 0) {
            return table[at] - 1;
        }
        if (met == codes.length) {
            codes = Arrays.copyOf(codes, 2 * met);
            table = new int[4 * codes.length];
            for (int i = 0; i < met; i++) {
                table[slot(codes[i])] = i + 1;
            }
            at = slot(code);
        }
        codes[met] = code;
        met++;
        table[at] = met;
        return met - 1;
    }

    /** Where in the table a code stands, or would. */
    private int slot(long sought) {
        int mask = table.length - 1;
        int at = (int) ((sought * SCATTERS) >>> 32) & mask;
        while (table[at] > 0 && codes[table[at] - 1] != sought) {
            at = (at + 1) & mask;
        }
        return at;
    }

    private void add(long untilNs, int place) {
        if (segments == endNs.length) {
            endNs = Arrays.copyOf(endNs, 2 * segments);
            combination = Arrays.copyOf(combination, 2 * segments);
        }
        endNs[segments] = untilNs;
        combination[segments] = place;
        segments++;
    }

    /** What was laid out. */
    FlashLayout laidOut() {
        return new FlashLayout(endsNs(), combinations(), codes());
    }

    /** The combinations' codes, by place. */
    long[] codes() {
        return Arrays.copyOf(codes, met);
    }

    /** State of a flasher in a combination. */
    int state(long combinationCode, int flasher) {
        return (int) (combinationCode / weights[flasher] % Flasher.STATES);
    }

    /** End of each segment (ns); the last may lie past the end of the time laid out. */
    long[] endsNs() {
        return Arrays.copyOf(endNs, segments);
    }

    /** Place of each segment's combination. */
    int[] combinations() {
        return Arrays.copyOf(combination, segments);
    }
}

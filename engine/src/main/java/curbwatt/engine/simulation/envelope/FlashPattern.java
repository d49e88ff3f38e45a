package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.FlashLayout;
import curbwatt.engine.simulation.part.CircuitDraw;
import curbwatt.engine.simulation.part.CircuitState;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * A cycle of segments, each with one combination of lit loads, repeated since the scene's start, or the segments of a window that
 * come once; with a place in it that moves along.
 *
 * <p>Without flashing loads there is one combination and no cycle.
 */
final class FlashPattern {

    private static final double NS_PER_S = 1e9;
    /** Fewer cycles than these are told by all of them: one of so few is not what they are in the mean. */
    private static final double FEW_CYCLES = 8;
    /** Of a clock quicker than this it does not matter where in a turn a step ends (s). */
    private static final double QUICK_S = 12.5;

    /** Edges within this time are one instant: what is nearer has been passed (ns). */
    private static final long ONE_INSTANT_NS = 1000;

    private final long cycleNs;
    private final Layout layout;
    private final FlashLayout laidOut;
    /** End of each segment within the cycle; the last may lie past the cycle's end (ns). */
    private final long[] endNs;

    /** The same (s). */
    private final double[] endS;

    /** Combination that is lit in each segment. */
    private final int[] lit;

    private final List<CircuitDraw[]> draws;
    private final List<CircuitState> varied;
    private final long[] spentNs;
    private long turnNs;
    private double turnS;
    private int segment;

    /**
     * What repeats.
     *
     * @param cycleNs length of all segments together (ns); 0: nothing flashes
     * @param repeats whether they repeat; otherwise they hold once, and the pattern is not asked for other times
     * @param slowestNs longest period of a clock (ns)
     */
    record Layout(long cycleNs, boolean repeats, long slowestNs) {}

    FlashPattern(
            Layout layout,
            FlashLayout segments,
            int[] combinations,
            List<CircuitDraw[]> draws,
            List<CircuitState> varied) {
        this.layout = layout;
        cycleNs = layout.cycleNs();
        laidOut = segments;
        endNs = segments.endNs;
        endS = segments.endS;
        lit = new int[segments.places.length];
        for (int s = 0; s < lit.length; s++) {
            lit[s] = combinations[segments.places[s]];
        }
        this.draws = draws;
        this.varied = varied;
        spentNs = new long[draws.size()];
    }

    /** A pattern without flashes. */
    static FlashPattern steady() {
        return new FlashPattern(
                new Layout(0, true, 0),
                new FlashLayout(new long[0], new int[] {0}, new long[0]),
                new int[] {0},
                Collections.singletonList(new CircuitDraw[0]),
                List.of());
    }

    /** Whether its segments come again. */
    boolean repeats() {
        return layout.repeats();
    }

    /** Number of combinations. */
    int size() {
        return draws.size();
    }

    /** Number of segments in a cycle. */
    int segments() {
        return lit.length;
    }

    boolean isSteady() {
        return cycleNs == 0;
    }

    /** Length of the cycle (s); 0: there is none. */
    double cycleS() {
        return cycleNs / NS_PER_S;
    }

    /** Longest period of a clock in it (s); 0: there is none. */
    double slowestS() {
        return layout.slowestNs() / NS_PER_S;
    }

    /** Part of a step that tells how it moves the batteries: all of it, or one cycle of many quick ones (s). */
    double tellingS(double stepS) {
        return stepS > FEW_CYCLES * cycleS() && slowestS() < QUICK_S ? cycleS() : stepS;
    }

    /** Lets the network be solved for a combination. */
    void suppose(int number) {
        CircuitDraw[] own = draws.get(number);
        for (int c = 0; c < own.length; c++) {
            varied.get(c).suppose(own[c]);
        }
    }

    /** Lets the network be solved for the present again. */
    void supposeNothing() {
        for (int c = 0; c < varied.size(); c++) {
            varied.get(c).supposeNothing();
        }
    }

    /** Goes to the segment that holds a time, or begins within an instant of it. */
    void seek(double timeS) {
        if (isSteady()) {
            return;
        }
        long atNs = Math.round(timeS * NS_PER_S) + ONE_INSTANT_NS;
        long inTurnNs = atNs - turnNs;
        if (segment > 0 && inTurnNs >= endNs[segment - 1] && inTurnNs < endNs[segment]) {
            return;
        }
        long offsetNs = endNs[endNs.length - 1] - cycleNs;
        turnTo(Math.floorDiv(atNs - offsetNs, cycleNs) * cycleNs);
        int found = Arrays.binarySearch(endNs, atNs - turnNs);
        segment = found >= 0 ? found + 1 : -found - 1;
    }

    private void turnTo(long startNs) {
        turnNs = startNs;
        turnS = startNs / NS_PER_S;
    }

    /** Beginning of the present cycle, or of one so many later (s). */
    double turnS(int later) {
        return (turnNs + later * cycleNs) / NS_PER_S;
    }

    /** Number of the segment in its cycle. */
    int segment() {
        return segment;
    }

    /** The segment's combination. */
    int combination() {
        return lit[segment];
    }

    /** A segment's combination. */
    int combination(int place) {
        return lit[place];
    }

    /** First segment from one on that does not end before a time in the cycle (s). */
    int firstEndingFrom(int place, double inCycleS) {
        int found = Arrays.binarySearch(endS, place, endS.length, inCycleS);
        return found >= 0 ? found : -found - 1;
    }

    /** Combinations of all segments. */
    int[] combinations() {
        return lit;
    }

    /** End of all segments within the cycle (s). */
    double[] endsInCycleS() {
        return endS;
    }

    /** End of the segment since the scene's start (s); positive infinity: none. */
    double endS() {
        return isSteady() ? Double.POSITIVE_INFINITY : turnS + endS[segment];
    }

    /** Length of a segment (s). */
    double lengthS(int place) {
        return (endNs[place] - (place == 0 ? endNs[endNs.length - 1] - cycleNs : endNs[place - 1])) / NS_PER_S;
    }

    /** What a filter keeps of its output over each segment. */
    double[] keeps(double timeConstantS) {
        return laidOut.keeps(timeConstantS, this::lengthS);
    }

    /** Start of the segment since the scene's start (s). */
    double startS() {
        return turnS + (segment == 0 ? endS[endS.length - 1] - cycleNs / NS_PER_S : endS[segment - 1]);
    }

    /** Goes to the segment before. */
    void previous() {
        segment--;
        if (segment < 0) {
            segment = lit.length - 1;
            turnTo(turnNs - cycleNs);
        }
    }

    /** Goes to the next segment. */
    void next() {
        segment++;
        if (segment == lit.length) {
            segment = 0;
            turnTo(turnNs + cycleNs);
        }
    }

    /** When a combination is lit first from a time on, at which it may be lit already (s). */
    double firstS(int combination, double fromS) {
        seek(fromS);
        double atS = fromS;
        while (lit[segment] != combination) {
            atS = endS();
            next();
        }
        return atS;
    }

    /** When a combination was lit last before a time, at which it may be lit still (s). */
    double lastS(int combination, double toS) {
        seek(toS - Envelope.BEFORE_EDGE_S);
        double atS = toS;
        while (lit[segment] != combination) {
            atS = startS();
            previous();
        }
        return atS;
    }

    /** Shares of a time that the combinations have: counted edge by edge, so that they are exact. */
    void shares(double fromS, double toS, double[] shares) {
        if (isSteady()) {
            shares[0] = 1;
            return;
        }
        long fromNs = Math.round(fromS * NS_PER_S);
        long toNs = Math.round(toS * NS_PER_S);
        long turns = (toNs - fromNs) / cycleNs;
        Arrays.fill(spentNs, 0);
        if (turns > 0) {
            for (int s = 0; s < lit.length; s++) {
                long beforeNs = s == 0 ? endNs[endNs.length - 1] - cycleNs : endNs[s - 1];
                spentNs[lit[s]] += turns * (endNs[s] - beforeNs);
            }
        }
        seek(fromS);
        long atNs = fromNs;
        long lastNs = toNs - turns * cycleNs;
        while (atNs < lastNs) {
            long segmentEndNs = Math.min(turnNs + endNs[segment], lastNs);
            spentNs[lit[segment]] += segmentEndNs - atNs;
            atNs = segmentEndNs;
            next();
        }
        double wholeNs = toNs - fromNs;
        for (int k = 0; k < shares.length; k++) {
            shares[k] = spentNs[k] / wholeNs;
        }
    }
}

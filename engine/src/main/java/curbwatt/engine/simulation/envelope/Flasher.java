package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.FlashCycle;
import curbwatt.engine.simulation.part.LoadState;
import java.util.Arrays;
import java.util.BitSet;

/** One pattern of flashes, which any number of loads may follow, with a place in it that moves along. */
final class Flasher {

    private final FlashCycle cycle;
    private final long surgeNs;
    private final long periodNs;
    /** Instants within the period at which something changes (ns), rising. */
    private final long[] atNs;
    /** Whether it is lit after each of them. */
    private final boolean[] lit;
    /** Whether its inrush runs after each of them. */
    private final boolean[] surges;

    private int next;
    private long turnNs;

    /** The pattern that a load follows. */
    Flasher(LoadState load) {
        cycle = (FlashCycle) load.cycle;
        surgeNs = load.surgeNs();
        periodNs = cycle.periodNs();
        int edges = cycle.edges();
        long[] at = new long[2 * edges];
        int instants = 0;
        for (int e = 0; e < edges; e++) {
            at[instants++] = cycle.edgeNs(e);
            if (surgeEndsAfter(e)) {
                at[instants++] = (cycle.edgeNs(e) + surgeNs) % periodNs;
            }
        }
        atNs = Arrays.copyOf(at, instants);
        Arrays.sort(atNs);
        lit = new boolean[instants];
        surges = new boolean[instants];
        for (int i = 0; i < instants; i++) {
            int last = lastEdge(atNs[i]);
            lit[i] = cycle.isLitAfter(last);
            surges[i] = lit[i] && Math.floorMod(atNs[i] - cycle.edgeNs(last), periodNs) < surgeNs;
        }
    }

    private boolean surgeEndsAfter(int edge) {
        long nextNs = edge + 1 < cycle.edges() ? cycle.edgeNs(edge + 1) : cycle.edgeNs(0) + periodNs;
        return surgeNs > 0 && cycle.isLitAfter(edge) && cycle.edgeNs(edge) + surgeNs < nextNs;
    }

    /** The edge passed last at a time within the period. */
    private int lastEdge(long phaseNs) {
        int last = cycle.edges() - 1;
        for (int e = 0; e < cycle.edges() && cycle.edgeNs(e) <= phaseNs; e++) {
            last = e;
        }
        return last;
    }

    /** Whether a load follows the same pattern, inrush and all. */
    boolean isFollowedBy(LoadState load) {
        FlashCycle other = (FlashCycle) load.cycle;
        return load.surgeNs() == surgeNs && cycle.hasEdgesOf(other);
    }

    /** Number of instants in a time (ns) at which something changes. */
    long instants(long spanNs) {
        return spanNs / periodNs * atNs.length;
    }

    /** Goes to a time since the scene's start (ns); what changes at that time lies ahead. */
    void seek(long timeNs) {
        turnNs = Math.floorDiv(timeNs, periodNs) * periodNs;
        int found = Arrays.binarySearch(atNs, timeNs - turnNs);
        next = found >= 0 ? found : -found - 1;
        comeRound();
    }

    /** Next instant at which something changes (ns). */
    long nextNs() {
        return turnNs + atNs[next];
    }

    /** Passes all that changes up to a time (ns); true: there was something. */
    boolean passTo(long timeNs) {
        boolean passed = false;
        while (nextNs() <= timeNs) {
            next++;
            comeRound();
            passed = true;
        }
        return passed;
    }

    private void comeRound() {
        if (next == atNs.length) {
            next = 0;
            turnNs += periodNs;
        }
    }

    /** Writes its two bits: lit, and still in its inrush. */
    void sign(BitSet bits, int place) {
        int last = next == 0 ? atNs.length - 1 : next - 1;
        bits.set(2 * place, lit[last]);
        bits.set(2 * place + 1, surges[last]);
    }
}

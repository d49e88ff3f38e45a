package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.FlashCycle;
import curbwatt.engine.simulation.part.LoadState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One pattern of flashes, which any number of loads may follow, with a place in it that moves along. */
final class Flasher {

    /** Number of states. */
    static final int STATES = 3;

    private static final int DARK = 0;
    private static final int LIT = 1;
    private static final int SURGING = 2;

    private final FlashCycle cycle;
    private final long surgeNs;
    private final long periodNs;
    /** Instants within the period at which something changes (ns), rising. */
    private final long[] atNs;
    /** What it does after each of them. */
    private final int[] states;

    private final List<Long> signature;
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
        states = new int[instants];
        for (int i = 0; i < instants; i++) {
            int last = lastEdge(atNs[i]);
            boolean surges = Math.floorMod(atNs[i] - cycle.edgeNs(last), periodNs) < surgeNs;
            int whenLit = surges ? SURGING : LIT;
            states[i] = cycle.isLitAfter(last) ? whenLit : DARK;
        }
        signature = write();
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

    /** All that its states depend on: its period, and what it does from when on. */
    List<Long> signature() {
        return signature;
    }

    private List<Long> write() {
        List<Long> written = new ArrayList<>();
        written.add(periodNs);
        for (int i = 0; i < atNs.length; i++) {
            written.add(atNs[i]);
            written.add((long) states[i]);
        }
        return List.copyOf(written);
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

    /** Passes all that changes up to a time; the next instant at which something does (ns). */
    long passTo(long timeNs) {
        long ownNs = nextNs();
        while (ownNs <= timeNs) {
            next++;
            comeRound();
            ownNs = nextNs();
        }
        return ownNs;
    }

    private void comeRound() {
        if (next == atNs.length) {
            next = 0;
            turnNs += periodNs;
        }
    }

    /** What it does at present: one of {@value #STATES} states. */
    int state() {
        return states[next == 0 ? states.length - 1 : next - 1];
    }

    /** Whether it is lit in a state. */
    static boolean isLit(int state) {
        return state != DARK;
    }

    /** Whether its inrush runs in a state. */
    static boolean surges(int state) {
        return state == SURGING;
    }
}

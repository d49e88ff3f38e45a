package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.FlashLayout;
import curbwatt.engine.simulation.part.CircuitDraw;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.LoadState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds what the flashing loads repeat, its segments, and the distinct combinations among them.
 *
 * <p>Clocks with a common cycle of a minute at most repeat it. Clocks of their own, a little apart, repeat nothing within a scene:
 * for them the segments of a window are laid out as they come, and laid out anew where it ends.
 */
final class FlashCombinations {

    /** A common cycle longer than this is not looked for (ns). */
    private static final long LONGEST_CYCLE_NS = 60_000_000_000L;
    /** Most instants in a common cycle at which something changes. */
    private static final long MOST_IN_A_CYCLE = 4096;
    /** The same in a window. */
    private static final long MOST_IN_A_WINDOW = 16384;
    /** A window is never longer than this (ns). */
    private static final long LONGEST_WINDOW_NS = 600_000_000_000L;
    /** What repeats has no start (ns). */
    private static final long NO_START_NS = Long.MIN_VALUE;
    /** Most states of all flashers together that are looked at. */
    private static final int MOST_STATES = 1024;
    /** Most combinations that are solved for. */
    private static final int MOST_COMBINATIONS = 160;

    private final LoadBank bank;
    private final List<LoadState> averaged = new ArrayList<>();
    private final List<LoadState> others = new ArrayList<>();
    private final List<Flasher> flashers = new ArrayList<>();
    /** Which of the flashers each averaged load follows. */
    private final Map<LoadState, Integer> places = new HashMap<>();

    /** What is drawn in states met so far, by what the other loads draw. */
    private final Map<List<Double>, DistinctDraws> drawn = new HashMap<>();

    private FlashMerge merge = new FlashMerge(List.of());
    private FlashLayout layout = new FlashLayout(new long[0], new int[0], new long[0]);
    private final boolean repeats;
    private long cycleNs = 1;
    private long fromNs;

    /**
     * Looks at the loads that are on at a time (s).
     *
     * @param longestPeriodS slowest clock that is averaged over (s)
     */
    FlashCombinations(LoadBank bank, double timeS, double longestPeriodS) {
        this.bank = bank;
        List<LoadState> uncommon = new ArrayList<>();
        for (LoadState load : bank.timedLoads()) {
            if (bank.isActive(load)) {
                if (load.cycle.periodNs() > longestPeriodS * 1e9) {
                    others.add(load);
                } else if (!joins(load)) {
                    uncommon.add(load);
                }
            }
        }
        List<LoadState> common = List.copyOf(averaged);
        long commonCycleNs = cycleNs;
        uncommon.forEach(this::average);
        boolean together = !uncommon.isEmpty() && flashers.size() <= FlashMerge.MOST_FLASHERS;
        if (together) {
            merge = new FlashMerge(flashers);
            moveTo(timeS);
            together = layout.codes.length <= MOST_STATES && pattern(List.of()).size() <= MOST_COMBINATIONS;
        }
        repeats = !together;
        if (repeats) {
            averageNothing();
            common.forEach(this::average);
            others.addAll(uncommon);
            cycleNs = commonCycleNs;
            fromNs = 0;
            merge = new FlashMerge(flashers);
            layOut(false);
        }
    }

    /** Averages over a load too if the cycle it has in common with the others is not too long. */
    private boolean joins(LoadState load) {
        long periodNs = load.cycle.periodNs();
        long turns = periodNs / gcd(cycleNs, periodNs);
        if (turns > LONGEST_CYCLE_NS / cycleNs) {
            return false;
        }
        long commonNs = turns * cycleNs;
        boolean known = flashers.stream().anyMatch(flasher -> flasher.isFollowedBy(load));
        boolean joins = flashers.size() + (known ? 0 : 1) <= FlashMerge.MOST_FLASHERS
                && instants(commonNs) + (known ? 0 : new Flasher(load).instants(commonNs)) <= MOST_IN_A_CYCLE;
        if (joins) {
            average(load);
            cycleNs = commonNs;
        }
        return joins;
    }

    private void average(LoadState load) {
        averaged.add(load);
        int place = 0;
        while (place < flashers.size() && !flashers.get(place).isFollowedBy(load)) {
            place++;
        }
        if (place == flashers.size()) {
            flashers.add(new Flasher(load));
        }
        places.put(load, place);
    }

    private void averageNothing() {
        averaged.clear();
        drawn.clear();
        flashers.clear();
        places.clear();
    }

    private long instants(long spanNs) {
        return flashers.stream().mapToLong(flasher -> flasher.instants(spanNs)).sum();
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** Loads whose edges are averaged over. */
    List<LoadState> averaged() {
        return averaged;
    }

    /** Loads whose edges end a long step. */
    List<LoadState> others() {
        return others;
    }

    /** Until when the segments laid out hold (s); positive infinity: they repeat. */
    double holdsUntilS() {
        return repeats ? Double.POSITIVE_INFINITY : (fromNs + cycleNs) / 1e9;
    }

    /**
     * Lays out the window of a time (s). Windows lie where they lie, whatever a run does, so that runs can share them; each
     * begins a turn of the slowest clock before the one before it ends.
     */
    void moveTo(double timeS) {
        long inAMinute = Math.max(1, instants(LONGEST_CYCLE_NS));
        long apartNs = Math.min(LONGEST_WINDOW_NS, LONGEST_CYCLE_NS / inAMinute * MOST_IN_A_WINDOW);
        long overlapNs = slowestNs();
        fromNs = Math.floorDiv(Math.round(timeS * 1e9) + overlapNs, apartNs) * apartNs - overlapNs;
        cycleNs = apartNs + overlapNs;
        layOut(true);
    }

    private void layOut(boolean window) {
        if (!averaged.isEmpty()) {
            List<List<Long>> patterns =
                    flashers.stream().map(Flasher::signature).toList();
            layout = bank.layouts.of(patterns, window ? fromNs : NO_START_NS, cycleNs, () -> {
                merge.layOut(fromNs, cycleNs, window);
                return merge.laidOut();
            });
        }
    }

    private long slowestNs() {
        return averaged.stream().mapToLong(load -> load.cycle.periodNs()).max().orElseThrow();
    }

    /**
     * The pattern of the segments laid out.
     *
     * @param otherFactors what the loads that are not averaged over draw at present
     */
    FlashPattern pattern(List<Double> otherFactors) {
        if (averaged.isEmpty()) {
            return FlashPattern.steady();
        }
        List<CircuitState> varied = varied();
        DistinctDraws draws = drawn.computeIfAbsent(otherFactors, absent -> new DistinctDraws());
        int[] combinations = draws.places(layout.codes, code -> drawing(varied, code));
        return new FlashPattern(
                new FlashPattern.Layout(cycleNs, repeats, slowestNs()), layout, combinations, draws.distinct(), varied);
    }

    private List<CircuitState> varied() {
        List<CircuitState> varied = new ArrayList<>();
        for (CircuitState circuit : bank.circuits) {
            if (!Collections.disjoint(circuit.loads, places.keySet())) {
                varied.add(circuit);
            }
        }
        return varied;
    }

    private CircuitDraw[] drawing(List<CircuitState> circuits, long code) {
        CircuitDraw[] draws = new CircuitDraw[circuits.size()];
        for (int c = 0; c < draws.length; c++) {
            draws[c] = circuits.get(c).drawing(load -> factor(load, code));
        }
        return draws;
    }

    /** Multiple of its rated current that a load draws in a combination. */
    private double factor(LoadState load, long code) {
        Integer place = places.get(load);
        if (place == null) {
            return load.presentFactor();
        }
        int state = merge.state(code, place);
        double multiple = Flasher.surges(state) ? load.load.inrush().multipleFactor() : 1;
        return Flasher.isLit(state) ? multiple : 0;
    }
}

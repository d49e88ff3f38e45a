package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.FlashCycle;
import curbwatt.engine.simulation.part.CircuitDraw;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.LoadState;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * Finds what the flashing loads repeat, its segments, and the distinct combinations among them.
 *
 * <p>Clocks with a common cycle of a minute at most repeat it. Clocks of their own, a little apart, repeat nothing within a scene:
 * for them the segments of a window are laid out as they come, and laid out anew where it ends.
 */
final class FlashCombinations {

    /** Clocks slower than this are not averaged: their edges end a long step (ns). */
    private static final long LONGEST_PERIOD_NS = 2_500_000_000L;
    /** A common cycle longer than this is not looked for (ns). */
    private static final long LONGEST_CYCLE_NS = 60_000_000_000L;
    /** Most edges in a common cycle or a window. */
    private static final long MOST_EDGES = 4096;
    /** A window is never longer than this (ns). */
    private static final long LONGEST_WINDOW_NS = 600_000_000_000L;
    /** Most combinations that are solved for. */
    private static final int MOST_COMBINATIONS = 160;
    /** Edges within this time are one instant, as in {@link LoadBank} (ns). */
    private static final long ONE_INSTANT_NS = 1000;

    private final LoadBank bank;
    private final List<LoadState> averaged = new ArrayList<>();
    private final List<LoadState> others = new ArrayList<>();
    private final Map<BitSet, Integer> numbers = new LinkedHashMap<>();
    private final boolean repeats;
    private long cycleNs = 1;
    private long fromNs;
    private long[] ends = new long[0];
    private int[] combination = {0};

    /** Looks at the loads that are on at a time (s). */
    FlashCombinations(LoadBank bank, double timeS) {
        this.bank = bank;
        List<LoadState> slow = new ArrayList<>();
        List<LoadState> uncommon = new ArrayList<>();
        for (LoadState load : bank.timedLoads()) {
            if (bank.isActive(load)) {
                long common = commonNs(load);
                if (common == Long.MAX_VALUE) {
                    slow.add(load);
                } else if (common <= LONGEST_CYCLE_NS && edges(common) + edgesOf(load, common) <= MOST_EDGES) {
                    averaged.add(load);
                    cycleNs = common;
                } else {
                    uncommon.add(load);
                }
            }
        }
        others.addAll(slow);
        List<LoadState> common = List.copyOf(averaged);
        long commonCycleNs = cycleNs;
        averaged.addAll(uncommon);
        boolean together = !uncommon.isEmpty();
        if (together) {
            moveTo(timeS);
            together = numbers.size() <= MOST_COMBINATIONS;
        }
        repeats = !together;
        if (repeats) {
            averaged.clear();
            averaged.addAll(common);
            others.addAll(uncommon);
            cycleNs = commonCycleNs;
            fromNs = 0;
            layOut(false);
        }
    }

    private long commonNs(LoadState load) {
        long periodNs = load.cycle.periodNs();
        return periodNs > LONGEST_PERIOD_NS ? Long.MAX_VALUE : periodNs / gcd(cycleNs, periodNs) * cycleNs;
    }

    private long edges(long commonNs) {
        return averaged.stream().mapToLong(load -> edgesOf(load, commonNs)).sum();
    }

    private static long edgesOf(LoadState load, long spanNs) {
        return (spanNs / load.cycle.periodNs()) * (load.cycle.edges() + (load.surgeNs() > 0 ? 1 : 0));
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

    /** Lays out a window that begins at a time (s). */
    void moveTo(double timeS) {
        fromNs = Math.round(timeS * 1e9);
        long minuteEdges = Math.max(1, edges(LONGEST_CYCLE_NS));
        cycleNs = Math.min(LONGEST_WINDOW_NS, LONGEST_CYCLE_NS / minuteEdges * MOST_EDGES);
        layOut(true);
    }

    private void layOut(boolean window) {
        numbers.clear();
        if (averaged.isEmpty()) {
            return;
        }
        long[] starts = starts(window);
        ends = new long[starts.length];
        combination = new int[starts.length];
        for (int s = 0; s < starts.length; s++) {
            ends[s] = s + 1 < starts.length ? starts[s + 1] : starts[0] + cycleNs;
            combination[s] = number(signature(starts[s] + ONE_INSTANT_NS));
        }
    }

    FlashPattern pattern() {
        if (averaged.isEmpty()) {
            return FlashPattern.steady();
        }
        List<CircuitState> varied = bank.circuits.stream()
                .filter(circuit -> averaged.stream().anyMatch(circuit.loads::contains))
                .toList();
        List<CircuitDraw[]> draws = new ArrayList<>();
        for (BitSet signature : numbers.keySet()) {
            Map<LoadState, Double> factors = new HashMap<>();
            for (int i = 0; i < averaged.size(); i++) {
                LoadState load = averaged.get(i);
                double multiple = signature.get(2 * i + 1) ? load.load.inrush().multipleFactor() : 1;
                factors.put(load, signature.get(2 * i) ? multiple : 0.0);
            }
            ToDoubleFunction<LoadState> factor = load -> factors.getOrDefault(load, load.presentFactor());
            draws.add(varied.stream().map(circuit -> circuit.drawing(factor)).toArray(CircuitDraw[]::new));
        }
        long slowestNs =
                averaged.stream().mapToLong(load -> load.cycle.periodNs()).max().orElseThrow();
        return new FlashPattern(new FlashPattern.Layout(cycleNs, repeats, slowestNs), ends, combination, draws, varied);
    }

    private int number(BitSet signature) {
        Integer known = numbers.putIfAbsent(signature, numbers.size());
        return known == null ? numbers.size() - 1 : known;
    }

    /** Starts of the segments (ns): all edges and ends of inrush, those within an instant as one. */
    private long[] starts(boolean window) {
        TreeSet<Long> all = new TreeSet<>();
        if (window) {
            all.add(fromNs);
        }
        for (LoadState load : averaged) {
            FlashCycle cycle = (FlashCycle) load.cycle;
            long firstTurnNs = fromNs - fromNs % cycle.periodNs() - (window ? cycle.periodNs() : 0);
            for (long turn = firstTurnNs; turn < fromNs + cycleNs; turn += cycle.periodNs()) {
                for (int e = 0; e < cycle.edges(); e++) {
                    add(all, turn + cycle.edgeNs(e), window);
                    if (cycle.isLitAfter(e) && load.surgeNs() > 0) {
                        add(all, turn + cycle.edgeNs(e) + load.surgeNs(), window);
                    }
                }
            }
        }
        List<Long> starts = new ArrayList<>();
        for (long atNs : all) {
            if (starts.isEmpty() || atNs > starts.get(starts.size() - 1) + ONE_INSTANT_NS) {
                starts.add(atNs);
            }
        }
        return starts.stream().mapToLong(Long::longValue).toArray();
    }

    /** Adds an instant: of a window if it lies inside; of a cycle in any case, for what lies past its end comes round. */
    private void add(Set<Long> all, long atNs, boolean window) {
        if (!window) {
            all.add(atNs % cycleNs);
        } else if (atNs > fromNs && atNs < fromNs + cycleNs) {
            all.add(atNs);
        }
    }

    /** Two bits for each load at a time within the cycle: lit, and still in its inrush. */
    private BitSet signature(long atNs) {
        BitSet bits = new BitSet();
        for (int i = 0; i < averaged.size(); i++) {
            LoadState load = averaged.get(i);
            FlashCycle cycle = (FlashCycle) load.cycle;
            long phaseNs = atNs % cycle.periodNs();
            int last = cycle.edges() - 1;
            for (int e = 0; e < cycle.edges() && cycle.edgeNs(e) <= phaseNs; e++) {
                last = e;
            }
            long sinceNs = Math.floorMod(phaseNs - cycle.edgeNs(last), cycle.periodNs());
            bits.set(2 * i, cycle.isLitAfter(last));
            bits.set(2 * i + 1, cycle.isLitAfter(last) && sinceNs < load.surgeNs());
        }
        return bits;
    }
}

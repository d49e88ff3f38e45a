package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.clock.FlashCycle;
import curbwatt.engine.simulation.part.CircuitDraw;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.LoadState;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** Finds the common cycle of the flashing loads, its segments, and the distinct combinations among them. */
final class FlashCombinations {

    /** Clocks slower than this are not averaged: their edges end a long step (ns). */
    private static final long LONGEST_PERIOD_NS = 2_500_000_000L;
    /** A common cycle longer than this is not looked for (ns). */
    private static final long LONGEST_CYCLE_NS = 60_000_000_000L;
    /** Most edges in a common cycle. */
    private static final long MOST_EDGES = 4096;
    /** Edges within this time are one instant, as in {@link LoadBank} (ns). */
    private static final long ONE_INSTANT_NS = 1000;

    private final LoadBank bank;
    private final List<LoadState> averaged = new ArrayList<>();
    private final List<LoadState> others = new ArrayList<>();
    private final Map<BitSet, Integer> numbers = new LinkedHashMap<>();
    private long cycleNs = 1;

    FlashCombinations(LoadBank bank) {
        this.bank = bank;
        for (LoadState load : bank.timedLoads()) {
            if (!bank.isActive(load)) {
                continue;
            }
            long common = commonNs(load);
            long all = common > LONGEST_CYCLE_NS ? Long.MAX_VALUE : edges(common);
            if (common <= LONGEST_CYCLE_NS && all + edgesOf(load, common) <= MOST_EDGES) {
                averaged.add(load);
                cycleNs = common;
            } else {
                others.add(load);
            }
        }
    }

    private long commonNs(LoadState load) {
        long periodNs = load.cycle.periodNs();
        return periodNs > LONGEST_PERIOD_NS ? Long.MAX_VALUE : periodNs / gcd(cycleNs, periodNs) * cycleNs;
    }

    private long edges(long commonNs) {
        return averaged.stream().mapToLong(load -> edgesOf(load, commonNs)).sum();
    }

    private static long edgesOf(LoadState load, long commonNs) {
        return commonNs / load.cycle.periodNs() * (load.cycle.edges() + (load.surgeNs() > 0 ? 1 : 0));
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

    FlashPattern pattern() {
        if (averaged.isEmpty()) {
            return new FlashPattern(
                    0, 0, new long[0], new int[] {0}, Collections.singletonList(new CircuitDraw[0]), List.of());
        }
        numbers.clear();
        long[] starts = starts();
        long[] ends = new long[starts.length];
        int[] combination = new int[starts.length];
        for (int s = 0; s < starts.length; s++) {
            ends[s] = s + 1 < starts.length ? starts[s + 1] : starts[0] + cycleNs;
            combination[s] = number(signature(starts[s] + ONE_INSTANT_NS));
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
        return new FlashPattern(cycleNs, slowestNs, ends, combination, draws, varied);
    }

    private int number(BitSet signature) {
        Integer known = numbers.putIfAbsent(signature, numbers.size());
        return known == null ? numbers.size() - 1 : known;
    }

    /** Starts of the segments within the cycle (ns): all edges and ends of inrush, those within an instant as one. */
    private long[] starts() {
        TreeSet<Long> all = new TreeSet<>();
        for (LoadState load : averaged) {
            FlashCycle cycle = (FlashCycle) load.cycle;
            for (long turn = 0; turn < cycleNs; turn += cycle.periodNs()) {
                for (int e = 0; e < cycle.edges(); e++) {
                    all.add(turn + cycle.edgeNs(e));
                    if (cycle.isLitAfter(e) && load.surgeNs() > 0) {
                        all.add((turn + cycle.edgeNs(e) + load.surgeNs()) % cycleNs);
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

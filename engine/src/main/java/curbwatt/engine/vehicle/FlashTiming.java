package curbwatt.engine.vehicle;

import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * When the heads on one clock flash against each other.
 *
 * <p>Only clocks of at least two heads are touched; heads on clocks of their own drift as they are. A head's place in
 * the cycle is that of the beginning of its first flash.
 */
public enum FlashTiming {
    /** Every head of a clock begins its first flash when the clock's cycle begins. */
    TOGETHER,

    /**
     * The heads of a clock in groups that begin one after the other, at equal distances over the period.
     *
     * <p>There are as many groups as the longest train of flashes fits into the period, at least two, at most four,
     * and never more than heads. Loads go to the group of least rated current so far, the largest load first, so that
     * the groups come out about equal; a load that draws more than a group's equal share is first parted into as many
     * loads as there are groups, as evenly as its heads allow.
     */
    INTERLEAVED;

    /** Where a longest train leaves room for two more groups the peaks hardly fall; our choice. */
    private static final int MOST_GROUPS = 4;

    private static final double ROUNDING_FACTOR = 1 + 1e-9;

    /** The vehicle with its heads so timed; all else stays as it is. */
    public Vehicle of(Vehicle vehicle) {
        Map<String, List<Load>> retimed = new LinkedHashMap<>();
        clocks(vehicle).forEach((clock, loads) -> retimed.putAll(this == TOGETHER ? together(loads) : apart(loads)));
        return vehicle.withCircuits(vehicle.circuits().stream()
                .map(circuit -> circuit.withLoads(circuit.loads().stream()
                        .flatMap(load -> retimed.getOrDefault(load.name(), List.of(load)).stream())
                        .toList()))
                .toList());
    }

    /** The flashing loads of each clock that has at least two heads, by the clock's name, in the vehicle's order. */
    public static Map<String, List<Load>> clocks(Vehicle vehicle) {
        Map<String, List<Load>> clocks = vehicle.loads()
                .filter(load -> load.pattern() instanceof LoadPattern.Flashing)
                .collect(Collectors.groupingBy(
                        load -> flashing(load).clock().name(), LinkedHashMap::new, Collectors.toList()));
        clocks.values().removeIf(loads -> heads(loads) < 2);
        return clocks;
    }

    private static Map<String, List<Load>> together(List<Load> loads) {
        return loads.stream().collect(Collectors.toMap(Load::name, load -> List.of(placed(load, 0))));
    }

    private static Map<String, List<Load>> apart(List<Load> loads) {
        int groups = groups(loads);
        double shareA = loads.stream().mapToDouble(Load::ratedCurrentA).sum() / groups;
        Map<String, List<Load>> parts = new LinkedHashMap<>();
        for (Load load : loads) {
            boolean isLarge = load.heads() > 1 && load.ratedCurrentA() > ROUNDING_FACTOR * shareA;
            parts.put(load.name(), isLarge ? parted(load, groups) : List.of(load));
        }
        Map<Load, Integer> groupOf =
                dealt(parts.values().stream().flatMap(List::stream).toList(), groups);
        parts.replaceAll((name, pieces) -> pieces.stream()
                .map(piece -> placed(piece, (double) groupOf.get(piece) / groups))
                .toList());
        return parts;
    }

    private static int groups(List<Load> loads) {
        double longestMs =
                loads.stream().mapToDouble(FlashTiming::trainMs).max().orElseThrow();
        double periodMs = flashing(loads.get(0)).clock().periodMs();
        int fitting = (int) Math.floor(ROUNDING_FACTOR * periodMs / longestMs);
        return Math.min(heads(loads), Math.max(2, Math.min(MOST_GROUPS, fitting)));
    }

    private static List<Load> parted(Load load, int groups) {
        int parts = Math.min(groups, load.heads());
        return IntStream.range(0, parts)
                .mapToObj(part -> load.part(
                        load.name() + ", group " + (part + 1),
                        load.heads() / parts + (part < load.heads() % parts ? 1 : 0)))
                .toList();
    }

    /** The group of each load: the largest first, each to the group that draws least so far. */
    private static Map<Load, Integer> dealt(List<Load> loads, int groups) {
        double[] drawnA = new double[groups];
        Map<Load, Integer> groupOf = new LinkedHashMap<>();
        loads.stream()
                .sorted((one, other) -> Double.compare(other.ratedCurrentA(), one.ratedCurrentA()))
                .forEach(load -> {
                    int least = IntStream.range(0, groups)
                            .reduce(0, (best, group) -> drawnA[group] < drawnA[best] ? group : best);
                    drawnA[least] += load.ratedCurrentA();
                    groupOf.put(load, least);
                });
        return groupOf;
    }

    /** The load with its first flash beginning at a share of the period. */
    private static Load placed(Load load, double share) {
        LoadPattern.Flashing pattern = flashing(load);
        double periodMs = pattern.clock().periodMs();
        double phaseMs = (share * periodMs - pattern.onIntervals().get(0).fromMs() + periodMs) % periodMs;
        return load.withPattern(new LoadPattern.Flashing(pattern.clock(), pattern.onIntervals(), phaseMs));
    }

    /** From the beginning of the first flash of the cycle to the end of the last (ms). */
    private static double trainMs(Load load) {
        List<OnInterval> on = flashing(load).onIntervals();
        return on.get(on.size() - 1).toMs() - on.get(0).fromMs();
    }

    private static int heads(List<Load> loads) {
        return loads.stream().mapToInt(Load::heads).sum();
    }

    private static LoadPattern.Flashing flashing(Load load) {
        return (LoadPattern.Flashing) load.pattern();
    }
}

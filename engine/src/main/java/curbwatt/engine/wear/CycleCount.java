package curbwatt.engine.wear;

import curbwatt.engine.quantity.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Cycles in a record of the state of charge, counted by the rainflow method, ASTM E1049-85 section 5.4.4: small swings
 * inside a large one are whole cycles of their own, and the large one keeps its full depth.
 *
 * @param cycles in the order in which they close; those left open at the end count half, in order of time
 */
public record CycleCount(List<Cycle> cycles) {

    /** Copies the list. */
    public CycleCount {
        cycles = List.copyOf(cycles);
    }

    /**
     * Counts.
     *
     * @param stateOfChargeFractions the record, in order of time; the times do not matter
     * @throws IllegalArgumentException if one of them is infinite or NaN
     */
    public static CycleCount of(List<Double> stateOfChargeFractions) {
        List<Cycle> cycles = new ArrayList<>();
        List<Double> open = new ArrayList<>();
        for (double reversal : reversals(stateOfChargeFractions)) {
            open.add(reversal);
            closeInner(open, cycles);
        }
        for (int i = 1; i < open.size(); i++) {
            cycles.add(cycle(open.get(i - 1), open.get(i), false));
        }
        return new CycleCount(cycles);
    }

    /** Half-cycles by depth, in classes of equal width from 0 to 1. */
    public List<DepthClass> byDepth(int classes) {
        List<DepthClass> histogram = new ArrayList<>();
        for (int i = 0; i < classes; i++) {
            double from = (double) i / classes;
            double to = (double) (i + 1) / classes;
            boolean last = i == classes - 1;
            int halfCycles = cycles.stream()
                    .filter(cycle -> cycle.depthFraction() >= from && (last || cycle.depthFraction() < to))
                    .mapToInt(Cycle::halfCycles)
                    .sum();
            histogram.add(new DepthClass(from, to, halfCycles));
        }
        return histogram;
    }

    /** Depth of the deepest swing; 0 if there is none. */
    public double deepestFraction() {
        return cycles.stream().mapToDouble(Cycle::depthFraction).max().orElse(0);
    }

    /** Takes out the swings that the newest reversals enclose. */
    private static void closeInner(List<Double> open, List<Cycle> cycles) {
        while (open.size() >= 3) {
            int last = open.size() - 1;
            double newest = Math.abs(open.get(last) - open.get(last - 1));
            double before = Math.abs(open.get(last - 1) - open.get(last - 2));
            if (newest < before) {
                return;
            }
            boolean whole = open.size() > 3;
            cycles.add(cycle(open.get(last - 2), open.get(last - 1), whole));
            if (whole) {
                open.remove(last - 1);
                open.remove(last - 2);
            } else {
                open.remove(0);
            }
        }
    }

    private static Cycle cycle(double from, double to, boolean whole) {
        return new Cycle(Math.abs(to - from), 0.5 * (from + to), whole);
    }

    /** The first value, the last, and those between at which the direction turns. */
    private static List<Double> reversals(List<Double> series) {
        List<Double> turns = new ArrayList<>();
        for (double value : series) {
            Require.finite("stateOfChargeFraction", value, "");
            int size = turns.size();
            if (size > 0 && value == turns.get(size - 1)) {
                continue;
            }
            if (size > 1) {
                boolean rose = turns.get(size - 1) > turns.get(size - 2);
                boolean rises = value > turns.get(size - 1);
                if (rose == rises) {
                    turns.remove(size - 1);
                }
            }
            turns.add(value);
        }
        return turns;
    }
}

package curbwatt.engine.simulation.clock;

import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The edges of one load's pattern, one after the other.
 *
 * <p>Times are whole nanoseconds, so that edges that coincide on paper coincide here, after any number of cycles.
 */
public final class FlashCycle implements EdgeTrain {

    private static final double NS_PER_MS = 1e6;
    private static final double NS_PER_S = 1e9;

    private final long periodNs;
    private final long[] edgeNs;
    private final boolean[] litAfter;
    private int next;
    private long cycleStartNs;
    private boolean lit;

    private FlashCycle(long periodNs, List<long[]> intervalsNs) {
        this.periodNs = periodNs;
        long[] borderNs = new long[2 * intervalsNs.size()];
        for (int i = 0; i < borderNs.length; i++) {
            borderNs[i] = Math.floorMod(intervalsNs.get(i / 2)[i % 2], periodNs);
        }
        Arrays.sort(borderNs);
        long[] at = new long[borderNs.length];
        boolean[] after = new boolean[borderNs.length];
        int edges = 0;
        for (int i = 0; i < borderNs.length; i++) {
            boolean again = i > 0 && borderNs[i] == borderNs[i - 1];
            boolean litThen = isLitAt(borderNs[i], intervalsNs);
            if (!again && litThen != isLitAt(borderNs[i] - 1, intervalsNs)) {
                at[edges] = borderNs[i];
                after[edges] = litThen;
                edges++;
            }
        }
        edgeNs = Arrays.copyOf(at, edges);
        litAfter = Arrays.copyOf(after, edges);
        lit = isLitAt(0, intervalsNs);
        if (edgeNs.length > 0 && edgeNs[0] == 0) {
            advance();
        }
    }

    public static FlashCycle of(LoadPattern pattern) {
        if (pattern instanceof LoadPattern.Flashing flashing) {
            List<long[]> intervals = new ArrayList<>();
            for (OnInterval on : flashing.onIntervals()) {
                intervals.add(new long[] {
                    Math.round((on.fromMs() + flashing.phaseMs()) * NS_PER_MS),
                    Math.round((on.toMs() + flashing.phaseMs()) * NS_PER_MS)
                });
            }
            return new FlashCycle(Math.round(flashing.clock().periodMs() * NS_PER_MS), intervals);
        }
        if (pattern instanceof LoadPattern.Duty duty) {
            long fromNs = Math.round(duty.offsetS() * NS_PER_S);
            return new FlashCycle(Math.round(duty.everyS() * NS_PER_S), List.of(new long[] {
                fromNs, fromNs + Math.round(duty.onS() * NS_PER_S)
            }));
        }
        return new FlashCycle(1, List.of(new long[] {0, 1}));
    }

    private boolean isLitAt(long timeNs, List<long[]> intervalsNs) {
        for (long[] interval : intervalsNs) {
            if (Math.floorMod(timeNs - interval[0], periodNs) < interval[1] - interval[0]) {
                return true;
            }
        }
        return false;
    }

    @Override
    public boolean isLit() {
        return lit;
    }

    @Override
    public long nextEdgeNs() {
        return edgeNs.length == 0 ? NEVER : cycleStartNs + edgeNs[next];
    }

    @Override
    public void advance() {
        lit = litAfter[next];
        next++;
        if (next == edgeNs.length) {
            next = 0;
            cycleStartNs += periodNs;
        }
    }

    /** As edge by edge, but whole periods at once. */
    @Override
    public boolean passTo(long timeNs) {
        if (edgeNs.length == 0 || nextEdgeNs() > timeNs) {
            return false;
        }
        cycleStartNs += periodNs * ((timeNs - nextEdgeNs()) / periodNs);
        while (nextEdgeNs() <= timeNs) {
            advance();
        }
        return true;
    }

    @Override
    public long periodNs() {
        return edgeNs.length == 0 ? NEVER : periodNs;
    }

    @Override
    public int edges() {
        return edgeNs.length;
    }

    /** Whether its edges are those of another one. */
    public boolean hasEdgesOf(FlashCycle other) {
        return periodNs == other.periodNs
                && Arrays.equals(edgeNs, other.edgeNs)
                && Arrays.equals(litAfter, other.litAfter);
    }

    /** Time of an edge within the period (ns). */
    public long edgeNs(int edge) {
        return edgeNs[edge];
    }

    /** Whether the pattern is on after an edge. */
    public boolean isLitAfter(int edge) {
        return litAfter[edge];
    }

    /** Time of the last edge passed (ns); before the first it lies before the scene's start. */
    public long lastEdgeNs() {
        return next == 0 ? cycleStartNs - periodNs + edgeNs[edgeNs.length - 1] : cycleStartNs + edgeNs[next - 1];
    }
}

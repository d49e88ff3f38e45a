package curbwatt.engine.result;

import java.util.List;

/**
 * What was recorded along a run.
 *
 * @param spacingS time between lines (s)
 * @param circuits names of the circuits, in the order of {@link TraceRow#circuitMeanA}
 * @param cutoffs names of the cutoffs, in the order of {@link TraceRow#sensed}
 * @param rows lines in order of time, the first at the scene's start, the last at its end
 */
public record Trace(double spacingS, List<String> circuits, List<String> cutoffs, List<TraceRow> rows) {

    /** Copies the lists. */
    public Trace {
        circuits = List.copyOf(circuits);
        cutoffs = List.copyOf(cutoffs);
        rows = List.copyOf(rows);
    }
}

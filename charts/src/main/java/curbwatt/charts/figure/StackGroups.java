package curbwatt.charts.figure;

import curbwatt.charts.style.Palette;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.TraceRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The circuits of a trace as groups of a stack: the largest by themselves, the rest together. */
final class StackGroups {

    /** What the smallest circuits are called together. */
    static final String OTHER = "other";

    private final List<String> names;
    private final List<List<Integer>> members;

    StackGroups(Trace trace) {
        List<Integer> order = IntStream.range(0, trace.circuits().size())
                .boxed()
                .sorted(Comparator.comparing((Integer circuit) -> -meanA(trace.rows(), circuit))
                        .thenComparing(circuit -> circuit))
                .toList();
        int alone = order.size() <= Palette.groups() ? order.size() : Palette.groups() - 1;
        List<String> allNames = new ArrayList<>();
        List<List<Integer>> allMembers = new ArrayList<>();
        for (int circuit : order.subList(0, alone)) {
            allNames.add(trace.circuits().get(circuit));
            allMembers.add(List.of(circuit));
        }
        if (alone < order.size()) {
            allNames.add((order.size() - alone) + " " + OTHER);
            allMembers.add(order.subList(alone, order.size()));
        }
        this.names = List.copyOf(allNames);
        this.members = List.copyOf(allMembers);
    }

    /** Names, the group with the largest mean current first. */
    List<String> names() {
        return names;
    }

    /** Mean current of a group since the line before (A). */
    double currentA(int group, TraceRow row) {
        return members.get(group).stream()
                .mapToDouble(circuit -> row.circuitMeanA().get(circuit))
                .sum();
    }

    private static double meanA(List<TraceRow> rows, int circuit) {
        return rows.stream()
                .mapToDouble(row -> row.circuitMeanA().get(circuit))
                .average()
                .orElse(0);
    }
}

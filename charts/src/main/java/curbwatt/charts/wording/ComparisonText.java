package curbwatt.charts.wording;

import curbwatt.charts.run.Comparison;
import curbwatt.charts.run.Comparison.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A comparison in words.
 *
 * @param comparison the scenarios and what came of each
 */
public record ComparisonText(Comparison comparison) {

    /** Which hold what is asked, and which has most to spare. */
    public String headline() {
        List<Column> met = comparison.columns().stream()
                .filter(column -> asks(column) && column.answer().isMet())
                .toList();
        List<Column> missed = comparison.columns().stream()
                .filter(column -> asks(column) && !column.answer().isMet())
                .toList();
        if (met.isEmpty() && missed.isEmpty()) {
            return "Nothing is asked of any of them; " + roomiest(comparison.columns());
        }
        if (missed.isEmpty()) {
            return (met.size() == comparison.columns().size() ? "All hold" : joined(met) + " " + hold(met))
                    + " what is asked; " + roomiest(met);
        }
        if (met.isEmpty()) {
            return "None holds what is asked. " + misses(missed);
        }
        return joined(met) + " " + hold(met) + " what is asked. " + misses(missed);
    }

    private static boolean asks(Column column) {
        return !column.answer().verdict().findings().isEmpty();
    }

    private static String hold(List<Column> columns) {
        return columns.size() == 1 ? "holds" : "hold";
    }

    private static String misses(List<Column> columns) {
        return columns.stream()
                        .map(column -> column.label() + ": " + WayText.failure(column.answer()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private static String roomiest(List<Column> columns) {
        Column best = columns.stream()
                .max(Comparator.comparingDouble(column -> column.answer().restartMarginV()))
                .orElseThrow();
        double marginV = best.answer().restartMarginV();
        return Double.isFinite(marginV)
                ? "most room to start has " + best.label() + ", " + PlainText.volts(marginV) + "."
                : "no engine would start at the worst moment.";
    }

    private static String joined(List<Column> columns) {
        List<String> labels = columns.stream().map(Column::label).toList();
        int last = labels.size() - 1;
        return last == 0 ? labels.get(0) : String.join(", ", labels.subList(0, last)) + " and " + labels.get(last);
    }

    /** How far the inputs differ, in sentences. */
    public List<String> reasons() {
        int count = comparison.differences().size();
        List<String> sentences = new ArrayList<>();
        sentences.add(
                count == 0
                        ? "The inputs say the same."
                        : "The inputs differ in " + PlainText.count(count, "place") + ".");
        return sentences;
    }

    /** The words above the picture. */
    public Heading heading() {
        return new Heading(
                chargeFinding(),
                "Mean voltage of the starter node, and the starter battery's charge. A dot: a cutoff opened for the first"
                        + " time.");
    }

    private String chargeFinding() {
        Comparator<Column> byCharge =
                Comparator.comparingDouble(column -> column.answer().result().endChargeFraction());
        Column least = comparison.columns().stream().min(byCharge).orElseThrow();
        Column most = comparison.columns().stream().max(byCharge).orElseThrow();
        String low = PlainText.percent(least.answer().result().endChargeFraction());
        String high = PlainText.percent(most.answer().result().endChargeFraction());
        return low.equals(high)
                ? "All end at " + low + " charge"
                : "Charge at the end: from " + low + " in " + least.label() + " to " + high + " in " + most.label();
    }
}

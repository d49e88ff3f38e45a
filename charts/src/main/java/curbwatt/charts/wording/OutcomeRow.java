package curbwatt.charts.wording;

import curbwatt.charts.run.Comparison.Column;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.study.Answer;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A figure that runs are compared by.
 *
 * @param name what it is
 * @param key the same for other tools
 * @param value what it is of one run; empty: there is none
 * @param text how it is written
 * @param missing what stands where there is none
 * @param better 1: more is better; −1: less is; 0: neither
 */
public record OutcomeRow(
        String name,
        String key,
        Function<Column, OptionalDouble> value,
        DoubleFunction<String> text,
        String missing,
        int better) {

    private static final double S_PER_H = 3600;

    /** Every figure, in the order of the table. */
    public static List<OutcomeRow> all() {
        return List.of(
                row("Held", "heldS", answer -> answer.heldS(), PlainText::time, "nothing to hold", 1),
                row("First trip of a cutoff", "firstTripS", answer -> answer.firstTripS(), PlainText::time, "never", 0),
                row(
                        "Trips",
                        "trips",
                        answer -> OptionalDouble.of((double) answer.tripCount()),
                        OutcomeRow::whole,
                        "",
                        -1),
                row(
                        "Restart margin, least",
                        "restartMarginV",
                        answer -> finite(answer.restartMarginV()),
                        PlainText::volts,
                        "none",
                        1),
                more("Charge at the end", "endStateOfCharge", RunResult::endChargeFraction, PlainText::percent),
                more("Charge, lowest", "lowestStateOfCharge", RunResult::lowestChargeFraction, PlainText::percent),
                more("Voltage, lowest", "lowestVoltageV", RunResult::lowestV, PlainText::volts),
                row(
                        "Mean load",
                        "meanLoadA",
                        answer -> OptionalDouble.of(S_PER_H
                                * answer.result().charge().loadsAh()
                                / answer.result().durationS()),
                        PlainText::amperes,
                        "",
                        0),
                row(
                        "Engine hours",
                        "engineH",
                        answer -> OptionalDouble.of(answer.result().engine().runS() / S_PER_H),
                        hours -> PlainText.number(hours, 2) + " h",
                        "",
                        -1),
                row(
                        "Fuel, as a standing engine",
                        "fuelLitres",
                        answer -> answer.result().engine().fuelLitres(),
                        litres -> PlainText.number(litres, 2) + " L",
                        "not known",
                        -1));
    }

    private static OutcomeRow row(
            String name,
            String key,
            Function<Answer, OptionalDouble> value,
            DoubleFunction<String> text,
            String missing,
            int better) {
        return new OutcomeRow(name, key, column -> value.apply(column.answer()), text, missing, better);
    }

    /** A figure that every run has, and of which more is better. */
    private static OutcomeRow more(
            String name, String key, ToDoubleFunction<RunResult> value, DoubleFunction<String> text) {
        return row(name, key, answer -> OptionalDouble.of(value.applyAsDouble(answer.result())), text, "", 1);
    }

    /** What each run has, the best marked where they differ. */
    public List<String> cells(List<Column> columns) {
        List<OptionalDouble> values = columns.stream().map(value).toList();
        return values.stream().map(one -> cell(one, values)).toList();
    }

    private String cell(OptionalDouble one, List<OptionalDouble> all) {
        if (one.isEmpty()) {
            return missing;
        }
        String written = text.apply(one.getAsDouble());
        return best(all).filter(written::equals).map(best -> best + " (best)").orElse(written);
    }

    /** How the best is written; empty: they are written alike, or none is better. What reads alike counts as equal. */
    private Optional<String> best(List<OptionalDouble> all) {
        List<Double> values =
                all.stream().flatMapToDouble(OptionalDouble::stream).boxed().toList();
        boolean alike = values.stream().map(text::apply).distinct().count() < 2;
        return better == 0 || alike
                ? Optional.empty()
                : values.stream()
                        .max(Comparator.comparingDouble(value -> better * value))
                        .map(text::apply);
    }

    private static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static String whole(double value) {
        return PlainText.number(value, 0);
    }
}

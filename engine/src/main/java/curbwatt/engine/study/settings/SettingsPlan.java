package curbwatt.engine.study.settings;

import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.quantity.Require;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How the settings of a cutoff are searched.
 *
 * @param cutoff name of the cutoff; empty: the only one that the vehicle has
 * @param tripLevelsV trip levels to try (V), rising, 2 … 400 of them
 * @param tripDelaysS delays to try (s), rising, 2 … 400 of them
 * @param recloses rules of closing to try; empty: the one that the cutoff has
 * @param spread sizes that room is measured in
 */
public record SettingsPlan(
        Optional<String> cutoff,
        List<Double> tripLevelsV,
        List<Double> tripDelaysS,
        List<RecloseRule> recloses,
        Spread spread) {

    private static final int MOST_STEPS = 400;
    private static final double USUAL_FROM_V = 10.6;
    private static final int USUAL_LEVELS = 41;
    private static final double USUAL_STEP_V = 0.05;

    /** Refuses lists out of order and values out of a cutoff's range. */
    public SettingsPlan {
        Objects.requireNonNull(cutoff, "cutoff");
        Objects.requireNonNull(spread, "spread");
        tripLevelsV = rising("tripLevelsV", tripLevelsV, 6, 14, "V");
        tripDelaysS = rising("tripDelaysS", tripDelaysS, 0, 3600, "s");
        recloses = List.copyOf(recloses);
    }

    /** The usual search: 10.6 to 12.6 V by 0.05 V, and 21 delays from 1 s to half an hour, each about half as long again. */
    public static SettingsPlan usual() {
        return new SettingsPlan(Optional.empty(), usualLevelsV(), usualDelaysS(), List.of(), Spread.usual());
    }

    /** The usual trip levels (V). */
    public static List<Double> usualLevelsV() {
        return IntStream.range(0, USUAL_LEVELS)
                .mapToObj(i -> Math.round(100 * (USUAL_FROM_V + i * USUAL_STEP_V)) / 100.0)
                .toList();
    }

    /** The usual delays (s). */
    public static List<Double> usualDelaysS() {
        return List.of(
                1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 15.0, 20.0, 30.0, 45.0, 60.0, 90.0, 120.0, 180.0, 240.0, 300.0, 420.0,
                600.0, 900.0, 1200.0, 1800.0);
    }

    private static List<Double> rising(String field, List<Double> values, double least, double most, String unit) {
        List<Double> copy = List.copyOf(values);
        Require.inside("number of " + field, copy.size(), 2, MOST_STEPS, "");
        copy.forEach(value -> Require.inside(field, value, least, most, unit));
        for (int i = 1; i < copy.size(); i++) {
            if (copy.get(i) <= copy.get(i - 1)) {
                throw new IllegalArgumentException(field + " has " + copy.get(i) + " " + unit + " after "
                        + copy.get(i - 1) + " " + unit + "; they must rise");
            }
        }
        return copy;
    }
}

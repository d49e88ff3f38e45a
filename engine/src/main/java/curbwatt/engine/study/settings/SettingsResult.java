package curbwatt.engine.study.settings;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the search for settings found.
 *
 * @param cutoff name of the cutoff
 * @param plan what was searched
 * @param present the setting that the scenario has
 * @param presentFate what a run says of that
 * @param map every setting, and what a run says of it
 * @param reached room that each working setting has at least, in multiples of the spread
 * @param recommendation the setting with the most room; empty: none works
 * @param remedies if none works: what would make one work
 */
public record SettingsResult(
        String cutoff,
        SettingsPlan plan,
        TripSetting present,
        Fate presentFate,
        SettingsMap map,
        Map<Cell, Double> reached,
        Optional<Recommendation> recommendation,
        List<Remedy> remedies) {

    /** Copies the collections. */
    public SettingsResult {
        Objects.requireNonNull(cutoff, "cutoff");
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(present, "present");
        Objects.requireNonNull(presentFate, "presentFate");
        Objects.requireNonNull(map, "map");
        Objects.requireNonNull(recommendation, "recommendation");
        reached = Map.copyOf(reached);
        remedies = List.copyOf(remedies);
    }
}

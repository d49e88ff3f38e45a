package curbwatt.engine.study.settings;

import java.util.Objects;
import java.util.Optional;

/**
 * How the settings of a cutoff are searched.
 *
 * @param cutoff name of the cutoff; empty: the only one that the vehicle has
 */
public record SettingsPlan(Optional<String> cutoff) {

    /** Refuses missing parts. */
    public SettingsPlan {
        Objects.requireNonNull(cutoff, "cutoff");
    }

    /** The usual search. */
    public static SettingsPlan usual() {
        return new SettingsPlan(Optional.empty());
    }
}

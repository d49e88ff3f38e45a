package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How the settings of a cutoff are searched.
 *
 * @param place where it stands
 * @param cutoff name of the cutoff
 */
public record SettingsEntry(Place place, Optional<String> cutoff) {}

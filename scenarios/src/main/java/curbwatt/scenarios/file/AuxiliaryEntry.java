package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * A second battery, for the equipment, and what joins it to the rest.
 *
 * @param place where it stands
 * @param battery the battery
 * @param link what joins it to the starter node
 */
public record AuxiliaryEntry(Place place, Optional<BatteryEntry> battery, Optional<LinkEntry> link) {}

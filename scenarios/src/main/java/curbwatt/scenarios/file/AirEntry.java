package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * Air temperature at a time.
 *
 * @param place where it stands
 * @param atMin time since the phase's start (min)
 * @param airC temperature (°C)
 */
public record AirEntry(Place place, Optional<Double> atMin, Optional<Double> airC) implements TimedEntry {}

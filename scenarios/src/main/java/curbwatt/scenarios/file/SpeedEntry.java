package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * Engine speed at a time.
 *
 * @param place where it stands
 * @param atMin time since the phase's start (min)
 * @param engineRpm engine speed (1/min)
 */
public record SpeedEntry(Place place, Optional<Double> atMin, Optional<Double> engineRpm) implements TimedEntry {}

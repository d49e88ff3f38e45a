package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * What closes an open cutoff again.
 *
 * @param place where it stands
 * @param when the kind of rule
 * @param aboveV reclose level (V)
 * @param delayS time above it (s)
 */
public record RecloseEntry(Place place, Optional<RecloseWord> when, Optional<Double> aboveV, Optional<Double> delayS) {}

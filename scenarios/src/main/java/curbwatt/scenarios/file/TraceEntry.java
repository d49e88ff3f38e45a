package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How densely the run is recorded.
 *
 * @param place where it stands
 * @param spacingS time between lines (s)
 */
public record TraceEntry(Place place, Optional<Double> spacingS) {}

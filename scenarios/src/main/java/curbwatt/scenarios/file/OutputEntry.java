package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * A measured point of an alternator.
 *
 * @param place where it stands
 * @param shaftRpm shaft speed (1/min)
 * @param outputA output (A)
 */
public record OutputEntry(Place place, Optional<Double> shaftRpm, Optional<Double> outputA) {}

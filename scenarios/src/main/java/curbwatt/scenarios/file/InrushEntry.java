package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * What a load draws more just after it is switched on.
 *
 * @param place where it stands
 * @param multipleFactor current meanwhile as a multiple of the current after it
 * @param lastsS its length (s)
 */
public record InrushEntry(Place place, Optional<Double> multipleFactor, Optional<Double> lastsS) {}

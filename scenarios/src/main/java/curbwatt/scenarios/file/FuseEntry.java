package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * A fuse at the start of a feed.
 *
 * @param place where it stands
 * @param kind its make
 * @param ratingA what is printed on it (A)
 * @param ambientC air round it (°C)
 */
public record FuseEntry(Place place, Optional<FuseWord> kind, Optional<Double> ratingA, Optional<Double> ambientC) {}

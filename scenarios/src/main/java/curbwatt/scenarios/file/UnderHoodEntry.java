package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How the running engine warms the air under the hood.
 *
 * @param place where it stands
 * @param settledRiseK rise over the air outside after long running (K)
 * @param warmingMin time constant while the engine runs (min)
 * @param coolingMin time constant while it stands (min)
 */
public record UnderHoodEntry(
        Place place, Optional<Double> settledRiseK, Optional<Double> warmingMin, Optional<Double> coolingMin) {}

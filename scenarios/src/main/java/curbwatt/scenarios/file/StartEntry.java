package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How the battery stands at the start.
 *
 * @param place where it stands
 * @param chargePercent state of charge (percent)
 * @param batteryC battery temperature (°C)
 */
public record StartEntry(Place place, Optional<Double> chargePercent, Optional<Double> batteryC) {}

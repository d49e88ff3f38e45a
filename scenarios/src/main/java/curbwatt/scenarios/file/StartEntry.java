package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How the batteries stand at the start.
 *
 * @param place where it stands
 * @param chargePercent state of charge (percent)
 * @param auxiliaryChargePercent state of charge of the auxiliary battery (percent)
 * @param batteryC battery temperature (°C)
 */
public record StartEntry(
        Place place,
        Optional<Double> chargePercent,
        Optional<Double> auxiliaryChargePercent,
        Optional<Double> batteryC) {}

package curbwatt.engine.result;

/**
 * A cutoff's part of a line of a trace: the voltage at its sense point, before sensor error and filter.
 *
 * @param voltageV at the instant (V)
 * @param lowestV lowest since the line before (V)
 * @param highestV highest since the line before (V)
 */
public record SensedSample(double voltageV, double lowestV, double highestV) {}

package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * The lowest voltage allowed at a circuit's far end.
 *
 * @param place where it stands
 * @param circuit name of the circuit
 * @param voltageV the voltage (V)
 */
public record LeastVoltageEntry(Place place, Optional<String> circuit, Optional<Double> voltageV) {}

/**
 * A battery, lead-acid or LFP, as one electrical node: charge with a memory of the rate it was drawn at, terminal
 * voltage,
 * charging, gassing, cold, age.
 *
 * <p>{@link curbwatt.engine.battery.BatteryParameters} (what the label says) and
 * {@link curbwatt.engine.battery.BatteryCondition} (what has become of it) make a
 * {@link curbwatt.engine.battery.Battery}; at one temperature that is a {@link curbwatt.engine.battery.Terminal}, whose
 * voltage is a pure function of the state and the current. {@link curbwatt.engine.battery.DiffusionModes} moves the
 * state through time, exactly for constant current.
 *
 * <p>Signs and units: A, positive when the battery discharges; Ah; V; degrees Celsius.
 *
 * <p>Not here: the circuit around the battery, its temperature's course in time, wear by cycling, acid stratification,
 * sulfation as a process, cell imbalance, and the protection
 * that an LFP pack has inside ({@code curbwatt.engine.protection}).
 */
package curbwatt.engine.battery;

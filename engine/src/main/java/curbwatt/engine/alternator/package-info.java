/**
 * The charging source: how much current at which shaft speed ({@link curbwatt.engine.alternator.OutputCurve}), how
 * much of
 * it is left when hot ({@link curbwatt.engine.alternator.HotFactor}), which voltage it holds
 * ({@link curbwatt.engine.alternator.VoltageRegulator}). Does not solve the network: it says what it could deliver.
 */
package curbwatt.engine.alternator;

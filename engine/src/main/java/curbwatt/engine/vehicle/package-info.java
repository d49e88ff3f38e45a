/**
 * The parts put together: one battery node with its alternator, circuits, cutoffs and starter.
 *
 * <p>{@link curbwatt.engine.vehicle.Vehicle} refuses a whole that does not hang together, such as a cutoff on a
 * circuit that
 * is not there.
 */
package curbwatt.engine.vehicle;

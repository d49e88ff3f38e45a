/**
 * The time loop: the only place where something changes.
 *
 * <p>{@link curbwatt.engine.simulation.Simulation} is its face.
 */
package curbwatt.engine.simulation;

/**
 * The time loop. {@link curbwatt.engine.simulation.Simulation} is its face.
 *
 * <p>This package and those below it are the only places where something changes: parts between steps, the network they
 * meet in, devices that act, books and recorders that note.
 */
package curbwatt.engine.simulation;

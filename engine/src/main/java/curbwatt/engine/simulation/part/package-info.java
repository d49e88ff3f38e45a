/**
 * The parts of a vehicle between steps: batteries, loads, circuits, link, engine, and the point they stand at together.
 *
 * <p>Each remembers its own state. Which voltage they agree on is {@code network}'s, when they switch is {@code device}'s.
 */
package curbwatt.engine.simulation.part;

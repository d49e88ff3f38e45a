/**
 * What watches a run, step by step, and keeps what it wants.
 *
 * <p>A recorder sees a {@link curbwatt.engine.simulation.record.Step} and can change nothing.
 */
package curbwatt.engine.simulation.record;

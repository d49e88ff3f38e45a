/**
 * What a run notes down: ledgers, summaries, events.
 *
 * <p>Books are told of each step and never ask a device.
 */
package curbwatt.engine.simulation.book;

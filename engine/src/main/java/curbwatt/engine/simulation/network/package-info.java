/**
 * Kirchhoff's laws: the voltages and currents at which all parts agree.
 *
 * <p>It moves nothing in time.
 */
package curbwatt.engine.simulation.network;

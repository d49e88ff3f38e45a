/**
 * What runs in time by itself: the edges of a pattern, a delay that counts, a filtered reading.
 *
 * <p>It knows no circuit and no voltage but those it is shown.
 */
package curbwatt.engine.simulation.clock;

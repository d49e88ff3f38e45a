/**
 * How long of driving or idling gives a scene's charge back, and whether the shift pattern keeps up.
 *
 * <p>Leaves the shifts themselves to {@link curbwatt.engine.days}, whose runs it reads.
 */
package curbwatt.engine.study.recharge;

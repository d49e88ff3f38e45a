/**
 * Duty tests of published standards as data: what to run, and the figure to hold against the standard's limit.
 *
 * <p>Each {@link curbwatt.engine.duty.DutyTest} makes a vehicle as tested and a scene; the simulation runs them; the
 * test
 * judges the result. What comes out is a prediction, not a certification: the standards ask for a measurement on the
 * built vehicle, and were seen only as public specifications quote them.
 */
package curbwatt.engine.duty;

/**
 * What watches a voltage, a current or a margin and acts: cutoffs, fuses, link, idle control, automatic start, pack.
 *
 * <p>Each says when in a step it would act; the time loop cuts the step there.
 */
package curbwatt.engine.simulation.device;

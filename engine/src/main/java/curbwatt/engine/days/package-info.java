/**
 * Days to years of a vehicle's duty: does the battery creep down, on which day would the engine not start, how deep and
 * how often is the battery cycled.
 *
 * <p>{@link curbwatt.engine.days.RosterStudy} runs a {@link curbwatt.engine.scene.Roster} with
 * {@link curbwatt.engine.days.SteadyLoads} in place of flashing and duty patterns, in longer steps than a scene takes.
 * Nothing ages while it runs: the battery of the last day is the battery of the first, at another charge.
 */
package curbwatt.engine.days;

/**
 * From a scenario file to engine objects: the one door for callers.
 *
 * <p>{@link curbwatt.scenarios.assemble.Scenarios} opens a file, a demo scenario or a text, and returns a
 * {@link curbwatt.scenarios.assemble.ReadyScenario}, or throws all problems at once. The assemblers put defaults in
 * where
 * the file is silent and tell {@code Assumptions} of it; what the engine still refuses becomes a problem with a place.
 *
 * <p>Does not simulate, does not print.
 */
package curbwatt.scenarios.assemble;

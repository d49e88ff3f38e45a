/**
 * Rules that no schema can hold: names that must agree, and figures that contradict each other.
 *
 * <p>{@link curbwatt.scenarios.check.PartFilling} lays the file over the catalogue;
 * {@link curbwatt.scenarios.check.ScenarioCheck} runs every {@link curbwatt.scenarios.check.Rule}, which all report to
 * {@link curbwatt.scenarios.check.Findings}. A rule stays silent about a place where something was refused before, so
 * that a mistake is told once.
 *
 * <p>Does not build anything and does not simulate.
 */
package curbwatt.scenarios.check;

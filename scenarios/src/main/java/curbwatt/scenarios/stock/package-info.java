/**
 * What ships with the program: the {@link curbwatt.scenarios.stock.Catalogue} of generic parts, each with the source of
 * its figures, and the {@link curbwatt.scenarios.stock.DemoScenarios}.
 *
 * <p>Parts and scenarios are JSON resources; nothing is computed here.
 */
package curbwatt.scenarios.stock;

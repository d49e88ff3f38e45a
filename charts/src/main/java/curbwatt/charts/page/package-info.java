/**
 * The local page: a server on this machine's own addresses alone, which hands a browser the page's files and answers it
 * with runs of the real engine.
 *
 * <p>{@link curbwatt.charts.page.PageServer} is all that others see. Behind it a
 * {@link curbwatt.charts.page.Gate} lets in only what the page itself asks, an {@code …Endpoint} answers one kind of
 * question, and {@code …Json} spells the answer. The scenario is the browser's: every question brings it along, so the
 * server remembers nothing but which work is under way for which tab. Drawing and controls are files under
 * {@code curbwatt/page} in the jar.
 */
package curbwatt.charts.page;

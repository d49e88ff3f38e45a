/**
 * The combustion engine as the electrical system sees it: whether and how fast it turns, and what starting it takes.
 */
package curbwatt.engine.powertrain;

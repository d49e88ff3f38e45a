/**
 * The few numerical tools the engine needs beyond Commons Math, and one thin door to those Commons Math has.
 *
 * <p>Everything here is a pure function of its arguments. The package knows nothing about batteries, and it does not
 * integrate differential equations.
 */
package curbwatt.engine.numeric;

/**
 * The combustion engine as the electrical system sees it: whether and how fast it turns, what starting it takes, what
 * it
 * burns while it stands and turns, and how warm it makes the air round it.
 *
 * <p>Does not compute fuel on the road, emissions other than carbon dioxide, or torque.
 */
package curbwatt.engine.powertrain;

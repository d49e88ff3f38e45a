/**
 * What joins the starter node and the equipment node: settings of the four kinds of link.
 *
 * <p>Holds no state: whether a relay is closed at an instant is the simulation's business. Knows nothing of batteries.
 */
package curbwatt.engine.link;

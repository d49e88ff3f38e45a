/**
 * Resistance of copper feeds: wire, its gauge, the way back.
 *
 * <p>Not here: fuses and contacts, heating of the wire by its own current, ampacity, skin effect.
 */
package curbwatt.engine.wiring;

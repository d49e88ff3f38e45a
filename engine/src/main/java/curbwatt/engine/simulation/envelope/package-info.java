/**
 * Long steps: over many flashes at once, for as long as nothing switches but the flashes themselves.
 *
 * <p>Between events the same combinations of lit loads come back again and again, and the batteries change slowly against
 * a flash. A long step moves the batteries with the current averaged over the combinations (envelope following: Petzold,
 * An efficient numerical method for highly oscillatory ordinary differential equations, SIAM J. Numer. Anal. 18 (1981)),
 * solves the network for each combination, and shows the devices the waveform that this makes. Where a device might act it
 * ends, and edge by edge the time loop goes on.
 */
package curbwatt.engine.simulation.envelope;

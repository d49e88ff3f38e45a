/**
 * Wire and fuse of a feed: resistance, rating, time to open, and what rules say of a circuit.
 *
 * <p>{@link curbwatt.engine.wiring.WireRun} gives the resistance out and back of any area, a
 * {@link curbwatt.engine.wiring.WireSize} the area of a size that is sold. {@link
 * curbwatt.engine.wiring.InstalledFuse} warms
 * under its current and opens. {@link curbwatt.engine.wiring.WireAdvice} holds a
 * {@link curbwatt.engine.wiring.CircuitPlan} against the published rules. It advises, it does not certify.
 *
 * <p>Not here: contacts and terminals, heating of the wire by its own current, prospective fault current, circuit
 * breakers,
 * bolted fuses above 80 A, skin effect.
 */
package curbwatt.engine.wiring;

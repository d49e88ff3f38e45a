/**
 * What draws current, how the current follows the voltage, and when.
 *
 * <p>{@link curbwatt.engine.load.Load} is one consumer; {@link curbwatt.engine.load.LoadPattern} says when it is on
 * while its stage is; {@link curbwatt.engine.load.DropOut} says at which voltage it falls silent;
 * {@link curbwatt.engine.load.Inrush} says what it takes more just after it is switched on. Knows nothing of wires,
 * circuits or the node it hangs on, and holds no state: what is lit at an instant is the simulation's business.
 */
package curbwatt.engine.load;

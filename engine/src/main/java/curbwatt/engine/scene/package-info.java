/**
 * What the vehicle goes through: phases one after the other, and the state it starts in.
 *
 * <p>{@link curbwatt.engine.scene.Scene} is one such sequence; {@link curbwatt.engine.scene.Roster} repeats days of it.
 * Says what is asked of the vehicle, not what becomes of it.
 */
package curbwatt.engine.scene;

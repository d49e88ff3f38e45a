/**
 * Settings of the devices that watch a voltage or a current and act, and the rules of those that change the engine.
 *
 * <p>{@link curbwatt.engine.control.LowVoltageCutoff} and {@link curbwatt.engine.control.StagedCutoff} are settings
 * alone; their acting, which needs memory, is in the simulation. {@link curbwatt.engine.control.HighIdleControl} and
 * {@link curbwatt.engine.control.AutomaticStart} also say what follows from a state and a time's figures; the states
 * are values, and who keeps them is the simulation. Nothing here measures, steps through time or turns an engine.
 */
package curbwatt.engine.control;

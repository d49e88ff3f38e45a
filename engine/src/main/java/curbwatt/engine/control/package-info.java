/**
 * Settings of the devices that watch a voltage and act. The acting itself, which needs memory, is in the simulation.
 */
package curbwatt.engine.control;

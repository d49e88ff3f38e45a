/**
 * Whether the engine of a standing vehicle should idle, idle faster when the battery asks, be started by a device, or
 * stay off: what each way holds, what it takes over a year, and where the answer changes.
 */
package curbwatt.engine.study.idle;

/** Computes: parts, vehicle, scene, run, verdict. No files, no clock, no printing. */
package curbwatt.engine;

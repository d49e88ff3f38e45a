/**
 * Which settings of a cutoff hold the scene and still let the engine start: every pair of trip level and delay, by a run
 * of its own.
 */
package curbwatt.engine.study.settings;

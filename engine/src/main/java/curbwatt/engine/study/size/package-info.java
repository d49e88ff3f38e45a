/**
 * The smallest battery that holds a scene at an age, a temperature and odds: of any size, and out of a list; beside it
 * the size that the paper method of stationary practice gives for the same duty.
 */
package curbwatt.engine.study.size;

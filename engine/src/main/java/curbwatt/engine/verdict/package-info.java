/**
 * What was asked of a run, and whether it was met: figures and limits, and the doubts that a reader must know of. The
 * words
 * are made where the verdict is shown.
 */
package curbwatt.engine.verdict;

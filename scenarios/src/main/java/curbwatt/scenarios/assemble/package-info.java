/** From a scenario file to engine objects: the one door for callers. */
package curbwatt.scenarios.assemble;

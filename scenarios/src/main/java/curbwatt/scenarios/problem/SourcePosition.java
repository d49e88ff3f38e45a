package curbwatt.scenarios.problem;

/**
 * A place in an input file.
 *
 * @param file name as the user gave it
 * @param line line, from 1; 0: not in a line
 * @param column column, from 1; 0: not in a column
 * @param path place in the document, e.g. {@code vehicle.circuits[2].loads[0].ratedCurrentA}; empty: the whole
 */
public record SourcePosition(String file, int line, int column, String path) {}

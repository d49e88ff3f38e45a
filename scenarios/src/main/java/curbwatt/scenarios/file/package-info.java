/**
 * The scenario file as records, one for each JSON object, with the values as the user wrote them.
 *
 * <p>A key that the file leaves out is an empty {@code Optional} or an empty list; defaults are put in where the file
 * is assembled. Every entry knows its {@link curbwatt.scenarios.file.Place} in the document, so that a complaint about
 * it can be given a line. {@code over} lays an entry over a catalogue part of its kind: the entry's own keys win.
 *
 * <p>Nothing here checks a value or knows how the file is read.
 */
package curbwatt.scenarios.file;

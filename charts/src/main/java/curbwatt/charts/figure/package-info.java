/**
 * The pictures of a run, and their bytes.
 *
 * <p>Each figure ({@link curbwatt.charts.figure.VoltageFigure} and its neighbours) makes a
 * {@link curbwatt.charts.figure.Picture} from a run; nothing of the drawing library shows outside. The same run
 * gives the same bytes. Titles come from elsewhere as a {@link curbwatt.charts.figure.Caption}: a figure knows
 * what it shows, not what it means. Writes no files.
 */
package curbwatt.charts.figure;

/**
 * The printed answer: one self-contained page, its pictures, and the files beside it.
 *
 * <p>{@link curbwatt.charts.report.ReportFiles} makes every file of a run;
 * {@link curbwatt.charts.report.HtmlReport} puts a {@link curbwatt.charts.report.ReportModel} through the template in
 * {@code curbwatt/template}. The model holds finished words alone: the template decides order and look, never content.
 *
 * <p>Writes nothing; {@link curbwatt.charts.output.ReportFolder} does.
 */
package curbwatt.charts.report;

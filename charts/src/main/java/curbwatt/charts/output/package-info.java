/**
 * Files for other tools and for people, whole or not at all.
 *
 * <p>{@link curbwatt.charts.output.ResultJson} and {@link curbwatt.charts.output.TraceCsv} spell a run;
 * {@link curbwatt.charts.output.JsonText} and {@link curbwatt.charts.output.DigitText} spell trees and numbers;
 * {@link curbwatt.charts.output.ReportFolder} puts files in their place and is the only type that writes.
 *
 * <p>The same run gives the same bytes: no clock, no machine, no locale. {@code docs/result.md} is the contract.
 */
package curbwatt.charts.output;

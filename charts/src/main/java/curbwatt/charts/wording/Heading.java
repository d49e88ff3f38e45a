package curbwatt.charts.wording;

/**
 * The words above a chart.
 *
 * @param title what the chart shows to be so
 * @param subtitle what it is a chart of
 */
public record Heading(String title, String subtitle) {}

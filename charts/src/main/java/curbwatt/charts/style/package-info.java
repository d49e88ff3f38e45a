/**
 * One look for every picture: colours by meaning, the typeface, and how a chart is dressed.
 *
 * <p>Another room that shows something beside a picture takes {@link curbwatt.charts.style.Palette#css} and
 * {@link curbwatt.charts.style.Typeface#css} so that both match. Draws nothing itself.
 */
package curbwatt.charts.style;

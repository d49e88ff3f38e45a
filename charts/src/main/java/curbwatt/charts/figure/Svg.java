package curbwatt.charts.figure;

/**
 * A vector drawing in its two forms.
 *
 * @param alone a file: the typeface is inside
 * @param inPage the same for a page that carries {@link curbwatt.charts.style.Typeface#css} once: an {@code svg}
 *     element, no XML head, its ids beginning with the picture's name so that several fit on one page
 */
public record Svg(String alone, String inPage) {}

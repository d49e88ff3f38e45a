package curbwatt.charts.figure;

/** A finished picture; asking for its bytes twice gives the same bytes. */
public interface Picture {

    /** Short name, fit for a file name and unique among the pictures of a run. */
    String name();

    /** The words above it. */
    Caption caption();

    /** What it shows, for a reader who can't see it. */
    String alternativeText();

    /** A drawing that stands alone: the typeface is inside. */
    String svg();

    /**
     * The same drawing for a page that carries {@link curbwatt.charts.style.Typeface#css} once: an {@code svg}
     * element, no XML head, its ids beginning with {@link #name()} so that several fit on one page.
     */
    String svgInline();

    /** An image at twice the size in pixels. */
    byte[] png();
}

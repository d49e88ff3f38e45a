package curbwatt.charts.figure;

/** A finished picture; asking for its bytes twice gives the same bytes. */
public interface Picture {

    /** Short name, fit for a file name and unique among the pictures of a run. */
    String name();

    /** The words above it. */
    Caption caption();

    /** What it shows, for a reader who can't see it. */
    String alternativeText();

    /** The drawing, made anew at every call. */
    Svg svg();

    /** An image at twice the size in pixels. */
    byte[] png();
}

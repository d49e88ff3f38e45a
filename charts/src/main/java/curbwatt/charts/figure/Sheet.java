package curbwatt.charts.figure;

import curbwatt.charts.style.Typeface;

/** A picture as its drawing, its size in pixels and its words. */
record Sheet(String name, Caption caption, String alternativeText, int width, int height, Drawing drawing)
        implements Picture {

    @Override
    public String svg() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + SvgImage.of(this, Typeface.css());
    }

    @Override
    public String svgInline() {
        return SvgImage.of(this, "");
    }

    @Override
    public byte[] png() {
        return PngImage.of(this);
    }
}

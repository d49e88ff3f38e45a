package curbwatt.charts.figure;

/** A picture as its drawing, its size in pixels and its words. */
record Sheet(String name, Caption caption, String alternativeText, int width, int height, Drawing drawing)
        implements Picture {

    @Override
    public Svg svg() {
        return SvgImage.of(this);
    }

    @Override
    public byte[] png() {
        return PngImage.of(this);
    }
}

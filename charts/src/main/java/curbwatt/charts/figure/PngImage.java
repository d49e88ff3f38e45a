package curbwatt.charts.figure;

import curbwatt.charts.style.Palette;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** A sheet as an image of twice its size, so that it is sharp on paper. */
final class PngImage {

    private static final int SCALE = 2;

    private PngImage() {}

    static byte[] of(Sheet sheet) {
        BufferedImage image =
                new BufferedImage(SCALE * sheet.width(), SCALE * sheet.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Palette.PAPER.color());
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(SCALE, SCALE);
        sheet.drawing().draw(graphics);
        graphics.dispose();
        return PngFile.of(image);
    }
}

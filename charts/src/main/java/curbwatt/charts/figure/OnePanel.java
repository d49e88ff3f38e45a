package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.BiConsumer;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/**
 * The lay-out of a picture with a head above a single panel.
 *
 * @param head title, subtitle and key
 * @param abovePx room between head and panel (px)
 * @param heightPx height of the panel (px)
 * @param rightPx room to the right of it (px)
 */
record OnePanel(Head head, int abovePx, int heightPx, int rightPx) {

    /** Width of the sheet (px). */
    static final int WIDTH = 960;

    /**
     * The sheet.
     *
     * @param plot what the panel shows; its insets are set here
     * @param labels writes what stands over it
     */
    Sheet sheet(
            String name, Caption caption, String alternativeText, XYPlot plot, BiConsumer<Pen, List<Panel>> labels) {
        int top = head.height() + abovePx;
        int height = top + heightPx + HouseStyle.BELOW + 8;
        plot.setInsets(new RectangleInsets(top, 0, 8, rightPx));
        ChartDrawing drawing =
                new ChartDrawing(HouseStyle.chart(plot), new Rectangle2D.Double(0, 0, WIDTH, height), (pen, panels) -> {
                    head.write(pen);
                    labels.accept(pen, panels);
                });
        return new Sheet(name, caption, alternativeText, WIDTH, height, drawing);
    }
}

package curbwatt.charts.figure;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/**
 * A chart with what is written over it.
 *
 * @param chart axes, grid and data
 * @param bounds of the sheet (px)
 * @param labels writes the rest, given the panels from top to bottom
 */
record ChartDrawing(JFreeChart chart, Rectangle2D bounds, BiConsumer<Pen, List<Panel>> labels) implements Drawing {

    @Override
    public void draw(Graphics2D sheet) {
        written(sheet);
    }

    /** Draws, and says what was written where. */
    List<Pen.Written> written(Graphics2D sheet) {
        ChartRenderingInfo info = new ChartRenderingInfo(null);
        chart.draw(sheet, bounds, info);
        Pen pen = new Pen(sheet);
        labels.accept(pen, panels(info.getPlotInfo()));
        return pen.written();
    }

    private List<Panel> panels(PlotRenderingInfo info) {
        XYPlot plot = chart.getXYPlot();
        if (!(plot instanceof CombinedDomainXYPlot combined)) {
            return List.of(new Panel(info.getDataArea(), plot.getDomainAxis(), plot.getRangeAxis()));
        }
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < combined.getSubplots().size(); i++) {
            XYPlot part = combined.getSubplots().get(i);
            panels.add(new Panel(info.getSubplotInfo(i).getDataArea(), plot.getDomainAxis(), part.getRangeAxis()));
        }
        return panels;
    }
}

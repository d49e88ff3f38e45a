package curbwatt.charts.figure;

import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.ui.RectangleEdge;

/** Where a plot lies on the sheet, and where a value lies in it. */
record Panel(Rectangle2D area, ValueAxis across, ValueAxis upright) {

    double x(double value) {
        return across.valueToJava2D(value, area, RectangleEdge.BOTTOM);
    }

    double y(double value) {
        return upright.valueToJava2D(value, area, RectangleEdge.LEFT);
    }

    /** Place of a value, moved to the nearer edge if it lies outside. */
    double yInside(double value) {
        return Math.min(area.getMaxY(), Math.max(area.getY(), y(value)));
    }

    boolean shows(double uprightValue) {
        return upright.getRange().contains(uprightValue);
    }
}

package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Where along a level its name stands without lying over a curve.
 *
 * @param panel the panel
 * @param curves what is drawn in it
 */
record LevelPlace(Panel panel, List<CurveSheet.Curve> curves) {

    private static final double BESIDE_PX = 6;
    private static final double ABOVE_PX = 5;
    private static final double BELOW_PX = 15;
    private static final int STEPS = 20;

    /**
     * Left end of the name's base line: above the level or below it, as far to the left as it stands free; at the left end
     * above it if it stands free nowhere.
     *
     * @param widthPx width of the name (px)
     * @param levelPx height of the level (px)
     */
    Point2D of(double widthPx, double levelPx) {
        Rectangle2D area = panel.area();
        double roomPx = area.getWidth() - widthPx - 2 * BESIDE_PX;
        for (int step = 0; step <= STEPS; step++) {
            double left = area.getX() + BESIDE_PX + roomPx * step / STEPS;
            for (double base : new double[] {levelPx - ABOVE_PX, levelPx + BELOW_PX}) {
                Rectangle2D box = new Rectangle2D.Double(
                        left - 3, base - HouseStyle.SMALL, widthPx + BESIDE_PX, HouseStyle.SMALL + 3);
                if (area.contains(box) && curves.stream().noneMatch(curve -> crosses(curve, box))) {
                    return new Point2D.Double(left, base);
                }
            }
        }
        return new Point2D.Double(area.getX() + BESIDE_PX, levelPx - ABOVE_PX);
    }

    private boolean crosses(CurveSheet.Curve curve, Rectangle2D box) {
        for (int i = 1; i < curve.across().size(); i++) {
            Line2D piece = new Line2D.Double(
                    panel.x(curve.across().get(i - 1)),
                    panel.y(curve.upright().get(i - 1)),
                    panel.x(curve.across().get(i)),
                    panel.y(curve.upright().get(i)));
            if (piece.intersects(box)) {
                return true;
            }
        }
        return false;
    }
}

package curbwatt.engine.powertrain;

import curbwatt.engine.quantity.Require;
import java.util.List;

/**
 * Fuel that an engine without electrical load burns when it stands and turns, by its speed.
 *
 * <p>Straight lines between points; from nothing at rest to the first point; beyond the last point along the last line.
 * One point alone therefore means in proportion to speed, as friction at a constant mean pressure would have it. That
 * shape is common practice; published idle figures rarely name their speed.
 *
 * @param points burn at speeds, speeds rising, burn not falling
 */
public record IdleBurn(List<Point> points) {

    /**
     * Burn at a speed.
     *
     * @param engineRpm engine speed (1/min), 300 … 4000
     * @param burnLitresPerH fuel (L/h), 0.05 … 30
     */
    public record Point(double engineRpm, double burnLitresPerH) {
        /** Refuses figures out of range. */
        public Point {
            Require.inside("idleRpm", engineRpm, 300, 4000, "/min");
            Require.inside("idleLitresPerH", burnLitresPerH, 0.05, 30, "L/h");
        }
    }

    /** Refuses no point, speeds that do not rise and burns that fall. */
    public IdleBurn {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("idle fuel has no point; at least one is needed");
        }
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point after = points.get(i);
            if (after.engineRpm() <= before.engineRpm() || after.burnLitresPerH() < before.burnLitresPerH()) {
                throw new IllegalArgumentException("idle fuel must rise with speed: " + after.burnLitresPerH()
                        + " L/h at " + after.engineRpm() + " /min follows " + before.burnLitresPerH() + " L/h at "
                        + before.engineRpm() + " /min");
            }
        }
    }

    /** In proportion to speed through one known point. */
    public static IdleBurn through(double engineRpm, double burnLitresPerH) {
        return new IdleBurn(List.of(new Point(engineRpm, burnLitresPerH)));
    }

    /** Fuel at an engine speed (L/h); nothing at rest. */
    public double atLitresPerH(double engineRpm) {
        if (engineRpm <= 0) {
            return 0;
        }
        int last = points.size() - 1;
        int above = 0;
        while (above < last && points.get(above).engineRpm() < engineRpm) {
            above++;
        }
        Point high = points.get(above);
        double lowRpm = above == 0 ? 0 : points.get(above - 1).engineRpm();
        double lowLitresPerH = above == 0 ? 0 : points.get(above - 1).burnLitresPerH();
        double share = (engineRpm - lowRpm) / (high.engineRpm() - lowRpm);
        return lowLitresPerH + share * (high.burnLitresPerH() - lowLitresPerH);
    }
}

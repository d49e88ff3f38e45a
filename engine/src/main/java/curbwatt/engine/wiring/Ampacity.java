package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;

/**
 * Current that a copper wire with 105 °C insulation may carry for as long as one likes: the table of ABYC E-11 and 33
 * CFR 183.425
 * for boats, whose wires are those of trucks; gauge 20, which it does not have, from a truck builder's public wire
 * table. Between
 * gauges a straight line over the area, both logarithmic.
 */
public final class Ampacity {
    private static final int MOST_BUNDLED = 24;

    private final LogLogTable outsideEngineSpaceA = new LogLogTable(
            area(20), 14, area(18), 20, area(16), 25, area(14), 35, area(12), 45, area(10), 60, area(8), 80, area(6),
            120, area(4), 160, area(3), 180, area(2), 210, area(1), 245, area(0), 285, area(-1), 330, area(-2), 385,
            area(-3), 445);

    /**
     * Returns the current, A.
     *
     * @param areaMm2 area of copper, mm², that of gauges 20 to 4/0: 0.518 to 107.2
     * @param space where the wire runs
     * @param bundled conductors in the bundle that carry current, itself included, 1 to 24
     */
    public double limitA(double areaMm2, WireSpace space, int bundled) {
        Require.inside("areaMm2", areaMm2, outsideEngineSpaceA.first(), outsideEngineSpaceA.last(), "mm²");
        return outsideEngineSpaceA.value(areaMm2) * space.factor() * bundleFactor(bundled);
    }

    /** Whether the table has such an area, mm². */
    public boolean covers(double areaMm2) {
        return areaMm2 >= outsideEngineSpaceA.first() && areaMm2 <= outsideEngineSpaceA.last();
    }

    /** Returns the largest area of the table, mm². */
    double mostMm2() {
        return outsideEngineSpaceA.last();
    }

    /** Returns the share of the rating that is left in a bundle of conductors that carry current. */
    public static double bundleFactor(int bundled) {
        Require.inside("bundled", bundled, 1, MOST_BUNDLED, "conductors");
        if (bundled <= 2) {
            return 1;
        }
        if (bundled == 3) {
            return 0.70;
        }
        return bundled <= 6 ? 0.60 : 0.50;
    }

    private static double area(int gauge) {
        return new WireGauge(gauge).areaMm2();
    }
}

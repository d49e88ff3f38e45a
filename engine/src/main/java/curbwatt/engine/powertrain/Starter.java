package curbwatt.engine.powertrain;

import curbwatt.engine.quantity.Require;

/**
 * What a start draws: an inrush while the motor stands still, then a plateau while it cranks.
 *
 * <p>The plateau grows in the cold, because the oil stiffens: straight from 1 at 20 °C to {@code coldFactor} at −20
 * °C, on
 * along that line below, 1 above 20 °C. The inrush is limited by the circuit's resistance and does not grow.
 *
 * @param inrushA inrush current (A), 0 … 3000; 0: none
 * @param inrushS its length (s), 0 … 2
 * @param crankingA plateau at 20 °C and above (A), 1 … 2000
 * @param crankingS its length (s), 0.1 … 30
 * @param coldFactor plateau at −20 °C as a multiple of that at 20 °C, 1 … 5
 */
public record Starter(double inrushA, double inrushS, double crankingA, double crankingS, double coldFactor) {

    /**
     * Growth of the cranking current from room temperature to −20 °C: 80–120 A and 230–280 A in a car maker's public
     * manual for a four-cylinder engine.
     */
    public static final double USUAL_COLD_FACTOR = 2.5;

    private static final double WARM_C = 20;
    private static final double COLD_C = -20;

    /** Refuses figures out of range. */
    public Starter {
        Require.inside("inrushA", inrushA, 0, 3000, "A");
        Require.inside("inrushS", inrushS, 0, 2, "s");
        Require.inside("crankingA", crankingA, 1, 2000, "A");
        Require.inside("crankingS", crankingS, 0.1, 30, "s");
        Require.inside("coldFactor", coldFactor, 1, 5, "");
    }

    /** Length of a start, inrush and plateau (s). */
    public double durationS() {
        return inrushS + crankingS;
    }

    /** Plateau current at a temperature (A). */
    public double crankingA(double temperatureC) {
        double cold = Math.max(0, (WARM_C - temperatureC) / (WARM_C - COLD_C));
        return crankingA * (1 + (coldFactor - 1) * cold);
    }
}

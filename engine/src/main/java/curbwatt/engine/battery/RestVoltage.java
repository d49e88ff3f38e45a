package curbwatt.engine.battery;

import curbwatt.engine.numeric.MonotoneCubic;
import curbwatt.engine.quantity.Require;
import java.util.List;

/**
 * Voltage of a battery's cells in series at rest, by charge and temperature. Immutable; never falls with the charge.
 */
public sealed interface RestVoltage {

    /**
     * Returns the voltage at rest, V.
     *
     * @param chargeFraction state of charge; past 0 or 1 late in a discharge and while charging
     * @param warmerK temperature above 25 °C, K
     */
    double voltageV(double chargeFraction, double warmerK);

    /**
     * Returns the mean voltage at rest between empty and a state of charge, V: what is stored, over the charge.
     *
     * @param chargeFraction state of charge
     * @param warmerK temperature above 25 °C, K
     */
    double meanV(double chargeFraction, double warmerK);

    /**
     * A straight line, which goes on beyond empty and full.
     *
     * @param emptyV at 25 °C and state of charge 0, V. Flooded: public rest-voltage table credited to BCI. AGM: fitted
     *     to
     *     one measured 100 Ah battery
     * @param fullV at 25 °C and state of charge 1, V. Sources as before
     * @param perKelvinV rise with temperature, V/K. Slope of the BCI table near room temperature
     */
    record Line(double emptyV, double fullV, double perKelvinV) implements RestVoltage {
        /** Refuses a full battery that is not above an empty one. */
        public Line {
            Require.positive("emptyV", emptyV, "V");
            Require.inside("fullV", fullV, Math.nextUp(emptyV), Double.MAX_VALUE, "V");
            Require.finite("perKelvinV", perKelvinV, "V/K");
        }

        @Override
        public double voltageV(double chargeFraction, double warmerK) {
            return emptyV + perKelvinV * warmerK + (fullV - emptyV) * chargeFraction;
        }

        @Override
        public double meanV(double chargeFraction, double warmerK) {
            return 0.5 * (voltageV(0, warmerK) + voltageV(chargeFraction, warmerK));
        }
    }

    /** A table through a monotone cubic, the same at every temperature. Beyond empty and full the ends hold. */
    final class Table implements RestVoltage {
        private final List<Double> chargeFractions;
        private final MonotoneCubic curve;

        /**
         * Makes a table.
         *
         * @param chargeFractions states of charge, strictly rising from 0 to 1
         * @param voltagesV voltage at each, V, above 0, never falling
         */
        public Table(List<Double> chargeFractions, List<Double> voltagesV) {
            this.chargeFractions = List.copyOf(chargeFractions);
            curve = new MonotoneCubic(chargeFractions, voltagesV);
            Require.inside("first charge", chargeFractions.get(0), 0, 0, "");
            Require.inside("last charge", chargeFractions.get(chargeFractions.size() - 1), 1, 1, "");
            double beforeV = Double.MIN_VALUE;
            for (double voltageV : voltagesV) {
                beforeV = Require.inside("voltage", voltageV, beforeV, Double.MAX_VALUE, "V");
            }
        }

        @Override
        public double voltageV(double chargeFraction, double warmerK) {
            return curve.value(chargeFraction);
        }

        @Override
        public double meanV(double chargeFraction, double warmerK) {
            if (chargeFraction <= 0) {
                return curve.value(0);
            }
            double area = 0;
            for (int i = 1; i < chargeFractions.size() && chargeFractions.get(i - 1) < chargeFraction; i++) {
                area += area(chargeFractions.get(i - 1), Math.min(chargeFractions.get(i), chargeFraction));
            }
            return (area + Math.max(chargeFraction - 1, 0) * curve.value(1)) / chargeFraction;
        }

        /** Simpson's rule is exact for a cubic. */
        private double area(double from, double to) {
            return (to - from) / 6 * (curve.value(from) + 4 * curve.value(0.5 * (from + to)) + curve.value(to));
        }
    }
}

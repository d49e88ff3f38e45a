package curbwatt.engine.battery;

import curbwatt.engine.quantity.Require;

/**
 * The constants that every battery of one chemistry shares. Voltages are those of six cells in series.
 *
 * <p>A constant said to be <em>common practice</em> has no published page behind it.
 *
 * @param rest voltage at rest
 * @param discharge what the voltage loses under discharge, and what cold does to that
 * @param charge what the voltage gains under charge
 * @param gassing the side reaction that takes charging current and stores nothing
 */
public record ChemistryConstants(Rest rest, Discharge discharge, Charge charge, Gassing gassing) {

    /**
     * Voltage at rest, linear in the state of charge and in temperature.
     *
     * @param emptyV at 25 °C and state of charge 0. Flooded: public rest-voltage table credited to BCI. AGM: fitted to
     *     one measured 100 Ah battery
     * @param fullV at 25 °C and state of charge 1, V. Sources as before
     * @param perKelvinV rise with temperature, V/K. Slope of the BCI table near room temperature
     */
    public record Rest(double emptyV, double fullV, double perKelvinV) {
        /** Refuses a full battery that is not above an empty one. */
        public Rest {
            Require.positive("emptyV", emptyV, "V");
            Require.inside("fullV", fullV, Math.nextUp(emptyV), Double.MAX_VALUE, "V");
            Require.finite("perKelvinV", perKelvinV, "V/K");
        }
    }

    /**
     * Losses under discharge.
     *
     * @param concentrationV factor of the logarithm of the head, V. Flooded: common practice; AGM: fitted to one
     *     measured 100 Ah battery
     * @param activationV factor of the inverse hyperbolic sine of the current (Butler and Volmer's equation with equal
     *     branches), V. Fitted to one measured 100 Ah AGM battery
     * @param exchangeCurrentPerH exchange current over capacity, 1/h. Fitted with {@code activationV}
     * @param activationEnergyJPerMol Arrhenius energy of the ohmic resistance, J/mol. Common practice, held against the
     *     US Army's cranking-ability table
     * @param emptyResistanceRiseFraction relative rise of the ohmic resistance from full to empty. Common practice
     * @param capacityPerK relative change of the total charge per kelvin about 25 °C. 0.006 at the slow rates:
     *     coefficient in use with IEC 60896
     */
    public record Discharge(
            double concentrationV,
            double activationV,
            double exchangeCurrentPerH,
            double activationEnergyJPerMol,
            double emptyResistanceRiseFraction,
            double capacityPerK) {
        /** Refuses negative constants. */
        public Discharge {
            Require.inside("concentrationV", concentrationV, 0, 10, "V");
            Require.inside("activationV", activationV, 0, 10, "V");
            Require.positive("exchangeCurrentPerH", exchangeCurrentPerH, "1/h");
            Require.inside("activationEnergyJPerMol", activationEnergyJPerMol, 0, 200_000, "J/mol");
            Require.inside("emptyResistanceRiseFraction", emptyResistanceRiseFraction, 0, 100, "");
            Require.inside("capacityPerK", capacityPerK, 0, 0.1, "1/K");
        }
    }

    /**
     * What charging adds.
     *
     * @param acceptanceVh drop per ampere, times the missing charge, V·h: near the set-point the current follows the
     *     missing ampere-hours. Flooded: common practice; AGM: fitted to one measured charge of a 100 Ah battery
     * @param doublingK cooling that doubles {@code acceptanceVh}, K. Common practice
     * @param modeFactor share of the diffusion weights that acts on charge, 1. Common practice
     */
    public record Charge(double acceptanceVh, double doublingK, double modeFactor) {
        /** Refuses negative constants. */
        public Charge {
            Require.inside("acceptanceVh", acceptanceVh, 0, 100, "V·h");
            Require.positive("doublingK", doublingK, "K");
            Require.inside("modeFactor", modeFactor, 0, 1, "");
        }
    }

    /**
     * Gassing current, exponential in cell voltage and temperature: Schiffer, Sauer, Bindner, Cronin, Lundsager and
     * Kaiser, J. Power Sources 168 (2007) 66.
     *
     * @param per100AhA current of a 100 Ah battery at the reference point, A
     * @param growthPerV exponent's slope, 1/V of one cell
     * @param referenceCellV cell voltage of the reference point, V
     * @param growthPerK exponent's slope, 1/K
     * @param referenceC temperature of the reference point, °C
     */
    public record Gassing(
            double per100AhA, double growthPerV, double referenceCellV, double growthPerK, double referenceC) {
        /** Refuses negative constants. */
        public Gassing {
            Require.inside("per100AhA", per100AhA, 0, 100, "A");
            Require.inside("growthPerV", growthPerV, 0, 100, "1/V");
            Require.positive("referenceCellV", referenceCellV, "V");
            Require.inside("growthPerK", growthPerK, 0, 1, "1/K");
            Require.finite("referenceC", referenceC, "°C");
        }
    }
}

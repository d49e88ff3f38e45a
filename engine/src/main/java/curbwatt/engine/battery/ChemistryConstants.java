package curbwatt.engine.battery;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * The constants that every battery of one chemistry shares. Voltages are those of its cells in series,
 * but for gassing.
 *
 * <p>A constant said to be <em>common practice</em> has no published page behind it.
 *
 * @param cells cells in series, 1 to 8
 * @param rest voltage at rest
 * @param discharge what the voltage loses under discharge, and what cold does to that
 * @param charge what the voltage gains under charge
 * @param gassing the side reaction that takes charging current and stores nothing
 */
public record ChemistryConstants(int cells, RestVoltage rest, Discharge discharge, Charge charge, Gassing gassing) {
    /** Refuses missing parts. */
    public ChemistryConstants {
        Require.inside("cells", cells, 1, 8, "");
        Objects.requireNonNull(rest, "rest");
        Objects.requireNonNull(discharge, "discharge");
        Objects.requireNonNull(charge, "charge");
        Objects.requireNonNull(gassing, "gassing");
    }

    /**
     * Losses under discharge.
     *
     * @param concentrationV factor of the logarithm of the head, V. Flooded: common practice; AGM: fitted to one
     *     measured 100 Ah battery; LFP: RT/F of four cells, common practice
     * @param activationV factor of the inverse hyperbolic sine of the current (Butler and Volmer's equation with equal
     *     branches), V. Fitted to one measured 100 Ah AGM battery; LFP: 0, the label's resistance has it inside
     * @param exchangeCurrentPerH exchange current over capacity, 1/h. Fitted with {@code activationV}
     * @param activationEnergyJPerMol Arrhenius energy of the ohmic resistance, J/mol. Common practice, held against the
     *     US Army's cranking-ability table
     * @param emptyResistanceRiseFraction relative rise of the ohmic resistance from full to empty. Common practice
     * @param capacityPerK relative change of the total charge per kelvin about 25 °C, 1/K. Lead-acid: 0.006 at the slow
     *     rates, coefficient in use with IEC 60896
     * @param coldBendPerKPerK relative loss of the total charge per squared kelvin below 25 °C, 1/K². LFP: through the
     *     published 90 % at 0 °C and 70 % at −18 °C
     */
    public record Discharge(
            double concentrationV,
            double activationV,
            double exchangeCurrentPerH,
            double activationEnergyJPerMol,
            double emptyResistanceRiseFraction,
            double capacityPerK,
            double coldBendPerKPerK) {
        /** Share of the total charge that the deepest cold leaves; the law is not meant to be asked there. */
        private static final double LEAST_SHARE = 0.05;

        /** Refuses negative constants. */
        public Discharge {
            Require.inside("concentrationV", concentrationV, 0, 10, "V");
            Require.inside("activationV", activationV, 0, 10, "V");
            Require.positive("exchangeCurrentPerH", exchangeCurrentPerH, "1/h");
            Require.inside("activationEnergyJPerMol", activationEnergyJPerMol, 0, 200_000, "J/mol");
            Require.inside("emptyResistanceRiseFraction", emptyResistanceRiseFraction, 0, 100, "");
            Require.inside("capacityPerK", capacityPerK, 0, 0.1, "1/K");
            Require.inside("coldBendPerKPerK", coldBendPerKPerK, 0, 0.01, "1/K²");
        }

        /**
         * Returns A(T)/A, the total charge over that at 25 °C.
         *
         * @param warmerK temperature above 25 °C, K
         */
        public double chargeShare(double warmerK) {
            double colderK = Math.min(warmerK, 0);
            return Math.max(LEAST_SHARE, 1 + capacityPerK * warmerK - coldBendPerKPerK * colderK * colderK);
        }
    }

    /**
     * What charging adds.
     *
     * @param acceptanceVh drop per ampere, times the missing charge, V·h: near the set-point the current follows the
     *     missing ampere-hours. Flooded: common practice; AGM: fitted to one measured charge of a 100 Ah battery
     *     LFP: common practice, a tail that ends with the charge
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
        /** A battery that does not gas. */
        public static final Gassing NONE = new Gassing(0, 0, 1, 0, 25);

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

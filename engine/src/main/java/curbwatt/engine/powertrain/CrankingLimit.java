package curbwatt.engine.powertrain;

import curbwatt.engine.quantity.Require;
import java.util.OptionalDouble;

/**
 * Lowest battery voltage at which the engine is taken to start.
 *
 * <p>Where the scenario names none, the published minimum of the half-rating load test by temperature: 9.6 V at 21 °C
 * and
 * above down to 8.5 V at −18 °C and below, straight between the printed points. Source: US Army TM
 * 5-4210-230-14&amp;P-1,
 * table 5.
 *
 * @param fixedV voltage that holds at every temperature (V), 6 … 11.5; empty: the published table
 */
public record CrankingLimit(OptionalDouble fixedV) {

    private static final double[] FAHRENHEIT = {0, 10, 20, 30, 40, 50, 60, 70};
    private static final double[] MINIMUM_V = {8.5, 8.7, 8.9, 9.1, 9.3, 9.4, 9.5, 9.6};

    /** Refuses a voltage out of range. */
    public CrankingLimit {
        fixedV.ifPresent(limitV -> Require.inside("minimumCrankingV", limitV, 6, 11.5, "V"));
    }

    /** The published table. */
    public static CrankingLimit published() {
        return new CrankingLimit(OptionalDouble.empty());
    }

    /** Lowest allowed battery voltage while cranking, at a battery temperature (V). */
    public double minimumV(double temperatureC) {
        return fixedV.orElseGet(() -> tabulatedV(32 + 1.8 * temperatureC));
    }

    private static double tabulatedV(double fahrenheit) {
        if (fahrenheit <= FAHRENHEIT[0]) {
            return MINIMUM_V[0];
        }
        for (int i = 1; i < FAHRENHEIT.length; i++) {
            if (fahrenheit <= FAHRENHEIT[i]) {
                double share = (fahrenheit - FAHRENHEIT[i - 1]) / (FAHRENHEIT[i] - FAHRENHEIT[i - 1]);
                return MINIMUM_V[i - 1] + share * (MINIMUM_V[i] - MINIMUM_V[i - 1]);
            }
        }
        return MINIMUM_V[MINIMUM_V.length - 1];
    }
}

package curbwatt.engine.battery;

import java.util.Objects;

/**
 * One battery in its present condition, without its state of charge.
 *
 * @param parameters the battery as new
 * @param condition what has become of it
 */
public record Battery(BatteryParameters parameters, BatteryCondition condition) {
    private static final double HOURS_PER_MONTH = 730.5;
    private static final double SELF_DISCHARGE_REFERENCE_C = 25;
    private static final double SELF_DISCHARGE_DOUBLING_K = 10;

    /** Refuses missing parts. */
    public Battery {
        Objects.requireNonNull(parameters, "parameters");
        Objects.requireNonNull(condition, "condition");
    }

    /** Returns a new battery. */
    public static Battery asNew(BatteryParameters parameters) {
        return new Battery(parameters, BatteryCondition.asNew());
    }

    /** Returns C of the aged battery, Ah: the charge between state of charge 1 and 0. */
    public double capacityAh() {
        return parameters.capacityAh() * condition.capacityHealthFraction();
    }

    /** Returns A of the aged battery at 25 °C, Ah. */
    public double totalChargeAh() {
        return parameters.totalChargeAh() * condition.capacityHealthFraction();
    }

    /** Returns the modes that move the bound charge. */
    public DiffusionModes modes() {
        return parameters.modes();
    }

    /**
     * Returns the terminal of this battery at one temperature.
     *
     * @param temperatureC battery temperature, °C, −60 to 80
     */
    public Terminal at(double temperatureC) {
        return new Terminal(this, temperatureC);
    }

    /**
     * Returns the current that the battery loses inside itself, A; the caller adds it to the charge removed.
     *
     * <p>Doubles with every 10 K (common practice).
     *
     * @param temperatureC battery temperature, °C
     */
    public double selfDischargeA(double temperatureC) {
        return capacityAh()
                * condition.selfDischargePerMonthFraction()
                / HOURS_PER_MONTH
                * Math.pow(2, (temperatureC - SELF_DISCHARGE_REFERENCE_C) / SELF_DISCHARGE_DOUBLING_K);
    }
}

package curbwatt.engine.protection;

/** Why a pack refuses current in one direction. */
public enum Reason {
    /** The pack's voltage is too low to be discharged further. */
    UNDER_VOLTAGE(Quantity.VOLTAGE, false, Direction.DISCHARGE),
    /** The pack's voltage is too high to be charged further. */
    OVER_VOLTAGE(Quantity.VOLTAGE, true, Direction.CHARGE),
    /** Too much current was drawn. */
    DISCHARGE_CURRENT(Quantity.DISCHARGE_CURRENT, true, Direction.DISCHARGE),
    /** Too much current was fed in. */
    CHARGE_CURRENT(Quantity.CHARGE_CURRENT, true, Direction.CHARGE),
    /** Too cold to be charged: lithium would plate. */
    CHARGE_COLD(Quantity.TEMPERATURE, false, Direction.CHARGE),
    /** Too warm to be charged. */
    CHARGE_HEAT(Quantity.TEMPERATURE, true, Direction.CHARGE),
    /** Too cold to be discharged. */
    DISCHARGE_COLD(Quantity.TEMPERATURE, false, Direction.DISCHARGE),
    /** Too warm to be discharged. */
    DISCHARGE_HEAT(Quantity.TEMPERATURE, true, Direction.DISCHARGE);

    /** What a limit watches. */
    enum Quantity {
        VOLTAGE("V"),
        DISCHARGE_CURRENT("A"),
        CHARGE_CURRENT("A"),
        TEMPERATURE("°C");

        final String unit;

        Quantity(String unit) {
            this.unit = unit;
        }
    }

    /** What a limit stops. */
    enum Direction {
        CHARGE,
        DISCHARGE
    }

    final Quantity quantity;
    /** Whether the limit is passed by going above it. */
    final boolean upper;

    private final Direction stops;

    Reason(Quantity quantity, boolean upper, Direction stops) {
        this.quantity = quantity;
        this.upper = upper;
        this.stops = stops;
    }

    /** Whether this reason stops charging; otherwise it stops discharging. */
    public boolean stopsCharging() {
        return stops == Direction.CHARGE;
    }
}

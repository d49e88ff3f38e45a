package curbwatt.engine.vehicle;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * A battery in its place.
 *
 * @param name as the user calls it
 * @param battery its model
 * @param thermalTimeConstantS time constant with which it follows the air round it (s), 60 … 10 days
 * @param inEngineSpace whether that air is the air under the hood, where its temperature is known
 */
public record BatteryInstallation(String name, Battery battery, double thermalTimeConstantS, boolean inEngineSpace) {

    /** Time constant where none is stated (s): five hours; common practice, no published source. */
    public static final double USUAL_THERMAL_TIME_CONSTANT_S = 5 * 3600.0;

    /** A battery outside the engine space. */
    public BatteryInstallation(String name, Battery battery, double thermalTimeConstantS) {
        this(name, battery, thermalTimeConstantS, false);
    }

    /** Refuses figures out of range. */
    public BatteryInstallation {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(battery, "battery");
        Require.inside("thermalTimeConstantS", thermalTimeConstantS, 60, 864000, "s");
    }

    /** The same place with another battery in it. */
    public BatteryInstallation with(Battery other) {
        return new BatteryInstallation(name, other, thermalTimeConstantS, inEngineSpace);
    }
}

package curbwatt.engine.vehicle;

import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.powertrain.UnderHood;
import java.util.Objects;
import java.util.Optional;

/**
 * What acts on the engine for the sake of the electrical system, and what its running costs.
 *
 * @param highIdle control that raises the idle speed, if there is one
 * @param automaticStart device that starts the stopped engine, if there is one
 * @param fuel fuel that the engine takes, if it is known
 * @param underHood how it warms the air round it, if that is known
 */
public record EngineEquipment(
        Optional<HighIdleControl> highIdle,
        Optional<AutomaticStart> automaticStart,
        Optional<FuelRate> fuel,
        Optional<UnderHood> underHood) {

    /** Equipment of an engine of which nobody says how it warms the air round it. */
    public EngineEquipment(
            Optional<HighIdleControl> highIdle, Optional<AutomaticStart> automaticStart, Optional<FuelRate> fuel) {
        this(highIdle, automaticStart, fuel, Optional.empty());
    }

    /** Refuses missing parts. */
    public EngineEquipment {
        Objects.requireNonNull(highIdle, "highIdle");
        Objects.requireNonNull(automaticStart, "automaticStart");
        Objects.requireNonNull(fuel, "fuel");
        Objects.requireNonNull(underHood, "underHood");
    }

    /** Nothing acts on the engine, and its fuel is not counted. */
    public static EngineEquipment none() {
        return new EngineEquipment(Optional.empty(), Optional.empty(), Optional.empty());
    }
}

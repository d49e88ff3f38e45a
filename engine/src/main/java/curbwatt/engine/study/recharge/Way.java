package curbwatt.engine.study.recharge;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * A way to recharge.
 *
 * @param mode driving or idling
 * @param engineRpm engine speed (1/min)
 */
public record Way(EngineMode mode, double engineRpm) {

    /** Refuses an engine that stands still. */
    public Way {
        Objects.requireNonNull(mode, "mode");
        Require.inside("engineRpm", engineRpm, 1, 8000, "/min");
        if (!mode.isRunning()) {
            throw new IllegalArgumentException("mode is " + mode + "; only a running engine recharges");
        }
    }

    /** On the road. */
    public static Way driving(double engineRpm) {
        return new Way(EngineMode.DRIVING, engineRpm);
    }

    /** Standing. */
    public static Way idling(double engineRpm) {
        return new Way(EngineMode.IDLING, engineRpm);
    }
}
